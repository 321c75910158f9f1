package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.portion.Aim;
import java.util.function.Consumer;

/** Every gram has one home: what comes off goes somewhere. */
final class Homes implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (isHomeless(part)) {
                    found.accept(Diagnostic.of(TreeCode.NO_HOME, site.at(part, Aspect.NAME))
                            .with("part", part instanceof Part.Rest ? "rest" : part.name())
                            .with("cut", site.name())
                            .help("Say where it goes, with an arrow and a stream, such as " + example(part)));
                }
                if (part instanceof Cut cut) {
                    cut.portions().forEach(portion -> checkRemainder(site, cut, portion, found));
                }
            }
        }
    }

    private static boolean isHomeless(Part part) {
        boolean mayBeSilent = part instanceof Cut || part instanceof Part.Loss;
        return !mayBeSilent && part.home() instanceof Home.NotStated;
    }

    private static String example(Part part) {
        if (part instanceof Part.Bone) {
            return "-> bones";
        }
        boolean fatOrRest =
                part instanceof Part.Rest || part instanceof Part.Trim trim && trim.rule() instanceof TrimRule.FatCover;
        return fatOrRest ? "-> mince" : "-> waste";
    }

    private static void checkRemainder(Site site, Cut cut, Portion portion, Consumer<Diagnostic> found) {
        boolean leavesSome = !(portion.aim() instanceof Aim.Number);
        if (leavesSome && portion.remainder() instanceof Home.NotStated) {
            Place at = new Place.InTree(site.path().then(cut.name()).then(portion.name()), Aspect.NAME);
            found.accept(Diagnostic.of(TreeCode.REMAINDER_NO_HOME, at)
                    .with("portion", portion.name())
                    .with("cut", cut.name())
                    .help("Say where it goes: remainder -> diced"));
        }
    }
}
