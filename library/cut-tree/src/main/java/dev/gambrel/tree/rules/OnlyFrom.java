package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Portions;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** A stream that comes only from some cuts takes nothing from others. */
final class OnlyFrom implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Map<TradeName, Stream> particular = new HashMap<>();
        inspection.tree().streams().stream()
                .filter(stream -> !stream.onlyFrom().isEmpty())
                .forEach(stream -> particular.putIfAbsent(stream.name(), stream));
        if (particular.isEmpty()) {
            return;
        }
        checkCuts(inspection, found);
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                check(words(part, site), site.at(part, Aspect.STREAM), part.home(), particular, found);
            }
        }
        Portions.each(inspection, (path, portion) -> {
            Place.InTree remainder = new Place.InTree(path, Aspect.STREAM);
            check("the remainder of the " + portion.name(), remainder, portion.remainder(), particular, found);
            Place.InTree ends = new Place.InTree(path, Aspect.END_PIECES);
            check(
                    "each end piece of the " + portion.name(),
                    ends,
                    portion.endPieces().home(),
                    particular,
                    found);
        });
    }

    private static void check(
            String what, Place.InTree at, Home home, Map<TradeName, Stream> particular, Consumer<Diagnostic> found) {
        if (home instanceof Home.ToStream to && particular.containsKey(to.stream())) {
            Stream stream = particular.get(to.stream());
            if (at.path().names().stream().noneMatch(stream.onlyFrom()::contains)) {
                found.accept(Diagnostic.of(TreeCode.NOT_FROM_THERE, at)
                        .with("part", what)
                        .with("stream", stream.name())
                        .with("cuts", Findings.list(stream.onlyFrom()))
                        .help("Send it to another stream, or name the cut where the stream is declared."));
            }
        }
    }

    private static String words(Part part, Site site) {
        return part instanceof Part.Rest ? "the rest of the " + site.name() : "the " + part.name();
    }

    private static void checkCuts(Inspection inspection, Consumer<Diagnostic> found) {
        Set<TradeName> cuts = new HashSet<>();
        for (Site site : inspection.sites()) {
            site.parts().stream()
                    .filter(part -> part instanceof Cut)
                    .map(Part::name)
                    .forEach(cuts::add);
            if (site.isUnsure()) {
                return;
            }
        }
        List<Stream> streams = inspection.tree().streams();
        for (int i = 0; i < streams.size(); i++) {
            for (TradeName cut : streams.get(i).onlyFrom()) {
                if (!cuts.contains(cut)) {
                    Place at = new Place.InTree(TreePath.ROOT, Aspect.STREAM, i);
                    found.accept(Findings.suggest(
                            Diagnostic.of(TreeCode.CUT_NOT_MADE, at)
                                    .with("stream", streams.get(i).name())
                                    .with("cut", cut),
                            cut,
                            cuts));
                }
            }
        }
    }
}
