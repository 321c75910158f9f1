package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.math.BigDecimal;
import java.util.function.Consumer;

/** A portion's target lies within the range that it accepts. */
final class PortionTargets implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part instanceof Cut cut) {
                    cut.portions()
                            .forEach(portion ->
                                    checkTarget(site.path().then(cut.name()).then(portion.name()), portion, found));
                }
            }
        }
    }

    private static void checkTarget(TreePath path, Portion portion, Consumer<Diagnostic> found) {
        if (portion.range() instanceof Portion.Range.Stated range
                && isOutside(portion.target().exactMean(), range)) {
            found.accept(Diagnostic.of(TreeCode.TARGET_OUTSIDE_RANGE, new Place.InTree(path, Aspect.SHARE))
                    .with("target", Findings.meanAsWritten(portion.target()))
                    .with("low", range.low())
                    .with("high", range.high())
                    .related(new Place.InTree(path, Aspect.LIMIT), "the range that is accepted")
                    .help("Move the target into the range, or widen the range to hold it."));
        }
    }

    private static boolean isOutside(BigDecimal target, Portion.Range.Stated range) {
        boolean ordered = range.low().compareTo(range.high()) <= 0;
        return ordered
                && (target.compareTo(range.low().common()) < 0
                        || target.compareTo(range.high().common()) > 0);
    }
}
