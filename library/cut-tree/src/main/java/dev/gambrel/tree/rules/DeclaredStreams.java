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
import dev.gambrel.tree.Stream;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Whatever is sent to a stream is sent to one that is declared, and each is declared once. */
final class DeclaredStreams implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Set<TradeName> streams = declared(inspection.tree(), found);
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                checkHome(homeOf(part), () -> site.at(part, Aspect.STREAM), streams, found);
                if (part instanceof Cut cut) {
                    checkPortions(site, cut, streams, found);
                }
            }
        }
    }

    private static Set<TradeName> declared(CutTree tree, Consumer<Diagnostic> found) {
        Set<TradeName> streams = new LinkedHashSet<>();
        for (int i = 0; i < tree.streams().size(); i++) {
            Stream stream = tree.streams().get(i);
            if (!streams.add(stream.name())) {
                found.accept(Diagnostic.of(TreeCode.DUPLICATE_STREAM, new Place.InTree(TreePath.ROOT, Aspect.STREAM, i))
                        .with("stream", stream.name())
                        .help("Take one of the two lines out."));
            }
        }
        return streams;
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

    private static void checkPortions(Site site, Cut cut, Set<TradeName> streams, Consumer<Diagnostic> found) {
        for (Portion portion : cut.portions()) {
            TreePath path = site.path().then(cut.name()).then(portion.name());
            checkHome(portion.remainder(), () -> new Place.InTree(path, Aspect.STREAM), streams, found);
        }
    }

    private static void checkHome(Home home, Supplier<Place> at, Set<TradeName> streams, Consumer<Diagnostic> found) {
        if (home instanceof Home.ToStream to && !streams.contains(to.stream())) {
            Diagnostic finding =
                    Diagnostic.of(TreeCode.UNKNOWN_STREAM, at.get()).with("stream", to.stream());
            found.accept(Findings.suggest(finding, to.stream(), streams)
                    .help("Or declare it: stream " + to.stream() + ", saleable"));
        }
    }
}
