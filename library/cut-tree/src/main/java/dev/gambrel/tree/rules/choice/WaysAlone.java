package dev.gambrel.tree.rules.choice;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.inspection.ChoiceCode;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import java.util.List;
import java.util.function.Consumer;

/** What is worked in ways has no weight beside them: each way is all of it. */
public final class WaysAlone implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            if (site.hasWays()) {
                List<Part> parts = site.isCarcass()
                        ? inspection.tree().parts()
                        : site.cut().parts();
                parts.stream()
                        .filter(part -> !(part instanceof Way))
                        .forEach(part ->
                                found.accept(beside(site, "the line of the " + part.name(), site.at(part, Aspect.NAME))
                                        .help("Write the line in the braces of each way that it is true of.")));
                if (!site.isCarcass()) {
                    checkCut(site, site.cut(), found);
                }
            }
        }
    }

    private static void checkCut(Site site, Cut cut, Consumer<Diagnostic> found) {
        if (cut.home() instanceof Home.ToStream to) {
            found.accept(beside(site, "the arrow to " + to.stream(), site.at(Aspect.STREAM))
                    .help("Write the arrow after the way whose meat goes there, on its “worked as” line."));
        }
        for (Portion portion : cut.portions()) {
            Place at = new Place.InTree(site.path().then(portion.name()), Aspect.NAME);
            found.accept(beside(site, "the portion " + portion.name(), at)
                    .help("Write the portion in the braces of the way that it is cut in."));
        }
    }

    private static Diagnostic beside(Site site, String what, Place at) {
        return Diagnostic.of(ChoiceCode.BESIDE_WAYS, at)
                .with("cut", site.name())
                .with("what", what);
    }
}
