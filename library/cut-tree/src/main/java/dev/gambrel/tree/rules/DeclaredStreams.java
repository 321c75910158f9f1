package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.inspection.DeclaredOnce;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
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
        Set<TradeName> streams = DeclaredOnce.names(
                inspection.tree().streams().stream().map(Stream::name).toList(),
                Aspect.STREAM,
                (name, at) -> Diagnostic.of(TreeCode.DUPLICATE_STREAM, at).with("stream", name),
                found);
        Map<TradeName, List<Place.InTree>> unknown = new LinkedHashMap<>();
        BiConsumer<Home, Supplier<Place.InTree>> sent = (home, at) -> {
            if (home instanceof Home.ToStream to && !streams.contains(to.stream())) {
                unknown.computeIfAbsent(to.stream(), name -> new ArrayList<>()).add(at.get());
            }
        };
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                sent.accept(part.home(), () -> site.at(part, Aspect.STREAM));
                if (part instanceof Cut cut) {
                    for (Portion portion : cut.portions()) {
                        sent.accept(portion.remainder(), () -> of(site, cut, portion, Aspect.STREAM));
                        sent.accept(portion.endPieces().home(), () -> of(site, cut, portion, Aspect.END_PIECES));
                    }
                }
            }
        }
        unknown.forEach((stream, places) -> found.accept(unknown(stream, places, streams)));
    }

    private static Place.InTree of(Site site, Cut cut, Portion portion, Aspect aspect) {
        return new Place.InTree(site.path().then(cut.name()).then(portion.name()), aspect);
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
        return Findings.suggestOrDeclare(
                finding, stream, streams, "stream " + stream + ", and after the comma saleable, by-product or waste.");
    }
}
