package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Portions;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import java.util.Optional;
import java.util.function.Consumer;

/** What is aimed at, weight or thickness, is accepted; and what still counts is smaller. */
final class PortionTargets implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Portions.each(inspection, (path, portion) -> {
            Limit weight = portion.acceptance().weight();
            portion.aim()
                    .targetWeight()
                    .flatMap(target -> outside(target, weight, path, Aspect.SHARE, Aspect.LIMIT))
                    .ifPresent(found);
            Limit thickness = portion.acceptance().thickness();
            portion.aim()
                    .targetThickness()
                    .flatMap(target -> outside(target, thickness, path, Aspect.THICKNESS, Aspect.THICKNESS_LIMIT))
                    .ifPresent(found);
            checkSmallest(path, portion, found);
        });
    }

    private static Optional<Diagnostic> outside(
            Expected target, Limit limit, TreePath path, Aspect aspect, Aspect limitAspect) {
        if (isOrdered(limit)) {
            if (limit.least().filter(low -> isBelow(target, low)).isPresent()) {
                return Optional.of(finding(target, limit, "under", path, aspect, limitAspect));
            }
            if (limit.most().filter(high -> isAbove(target, high)).isPresent()) {
                return Optional.of(finding(target, limit, "over", path, aspect, limitAspect));
            }
        }
        return Optional.empty();
    }

    private static boolean isOrdered(Limit limit) {
        return !(limit instanceof Limit.Between range) || range.low().compareTo(range.high()) <= 0;
    }

    private static boolean isBelow(Expected target, Quantity low) {
        return target.exactMean().compareTo(low.common()) < 0;
    }

    private static boolean isAbove(Expected target, Quantity high) {
        return target.exactMean().compareTo(high.common()) > 0;
    }

    private static Diagnostic finding(
            Expected target, Limit limit, String way, TreePath path, Aspect aspect, Aspect limitAspect) {
        Place at = new Place.InTree(path, aspect);
        Place related = new Place.InTree(path, limitAspect);
        if (limit instanceof Limit.Between range) {
            return Diagnostic.of(TreeCode.TARGET_OUTSIDE_RANGE, at)
                    .with("target", Findings.meanAsWritten(target))
                    .with("low", range.low())
                    .with("high", range.high())
                    .related(related, "the range that is accepted")
                    .help("Move the target into the range, or widen the range to hold it.");
        }
        return Diagnostic.of(BenchCode.TARGET_PAST_LIMIT, at)
                .with("target", Findings.meanAsWritten(target))
                .with("way", way)
                .with("limit", limit.least().or(limit::most).orElseThrow())
                .related(related, "the limit")
                .help("Move the target or the limit.");
    }

    private static void checkSmallest(TreePath path, Portion portion, Consumer<Diagnostic> found) {
        if (portion.acceptance().smallest() instanceof Measure.Stated smallest) {
            portion.aim()
                    .targetWeight()
                    .filter(target -> !isAbove(target, smallest.value()))
                    .ifPresent(target -> found.accept(
                            Diagnostic.of(BenchCode.SMALLEST_NOT_SMALLER, new Place.InTree(path, Aspect.SMALLEST))
                                    .with("smallest", smallest.value())
                                    .with("target", Findings.meanAsWritten(target))
                                    .related(new Place.InTree(path, Aspect.SHARE), "the target")
                                    .help("Write a smaller one, or take it out: then only whole portions count.")));
        }
    }
}
