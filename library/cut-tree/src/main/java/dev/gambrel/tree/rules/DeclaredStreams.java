package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Whatever is sent to a stream is sent to one that is declared, and each is declared once. */
final class DeclaredStreams implements Rule {
    private static final int MOST_RELATED = 5;

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Set<TradeName> streams = declared(inspection.tree(), found);
        Map<TradeName, List<Place.InTree>> unknown = new LinkedHashMap<>();
        BiConsumer<Home, Supplier<Place.InTree>> sent = (home, at) -> {
            if (home instanceof Home.ToStream to && !streams.contains(to.stream())) {
                unknown.computeIfAbsent(to.stream(), name -> new ArrayList<>()).add(at.get());
            }
        };
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                sent.accept(homeOf(part), () -> site.at(part, Aspect.STREAM));
                if (part instanceof Cut cut) {
                    for (Portion portion : cut.portions()) {
                        sent.accept(portion.remainder(), () -> remainder(site, cut, portion));
                    }
                }
            }
        }
        unknown.forEach((stream, places) -> found.accept(unknown(stream, places, streams)));
    }

    private static Place.InTree remainder(Site site, Cut cut, Portion portion) {
        return new Place.InTree(site.path().then(cut.name()).then(portion.name()), Aspect.STREAM);
    }

    private static Set<TradeName> declared(CutTree tree, Consumer<Diagnostic> found) {
        Map<TradeName, Integer> first = new LinkedHashMap<>();
        for (int i = 0; i < tree.streams().size(); i++) {
            TradeName name = tree.streams().get(i).name();
            Integer earlier = first.putIfAbsent(name, i);
            if (earlier != null) {
                found.accept(Diagnostic.of(TreeCode.DUPLICATE_STREAM, new Place.InTree(TreePath.ROOT, Aspect.STREAM, i))
                        .with("stream", name)
                        .related(new Place.InTree(TreePath.ROOT, Aspect.STREAM, earlier), "declared first")
                        .help("Take one of the two lines out."));
            }
        }
        return first.keySet();
    }

    private static Home homeOf(Part part) {
        if (part instanceof Cut cut) {
            return cut.home();
        } else if (part instanceof Part.Bone bone) {
            return bone.home();
        } else if (part instanceof Part.Trim trim) {
            return trim.home();
        } else if (part instanceof Part.Rest rest) {
            return rest.home();
        }
        return new Home.NotStated();
    }

    /** One finding for a stream, however often something is sent to it. */
    private static Diagnostic unknown(TradeName stream, List<Place.InTree> places, Set<TradeName> streams) {
        Diagnostic finding =
                Diagnostic.of(TreeCode.UNKNOWN_STREAM, places.get(0)).with("stream", stream);
        for (Place.InTree place : places.subList(1, Math.min(places.size(), 1 + MOST_RELATED))) {
            finding = finding.related(place, "also sent there");
        }
        if (places.size() > 1 + MOST_RELATED) {
            finding = finding.note("And " + (places.size() - 1 - MOST_RELATED) + " more lines send something there.");
        }
        return Findings.suggest(finding, stream, streams)
                .help("Or declare it: stream " + stream + ", and after the comma saleable, by-product or waste.");
    }
}
