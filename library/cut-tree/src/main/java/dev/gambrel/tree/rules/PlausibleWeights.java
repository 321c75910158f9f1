package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Portions;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.function.Consumer;

/** A carcass and a portion weigh something. */
final class PlausibleWeights implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        if (inspection.tree().carcass().band() instanceof WeightBand.Stated band
                && band.low().common().signum() <= 0) {
            found.accept(notPositive(band.low(), new Place.InTree(TreePath.ROOT, Aspect.BAND)));
        }
        Portions.each(
                inspection,
                (path, portion) -> portion.aim()
                        .targetWeight()
                        .filter(target -> target.exactMean().signum() <= 0)
                        .ifPresent(target -> found.accept(
                                notPositive(Findings.meanAsWritten(target), new Place.InTree(path, Aspect.SHARE)))));
    }

    private static Diagnostic notPositive(Quantity weight, Place at) {
        return Diagnostic.of(TreeCode.WEIGHT_NOT_POSITIVE, at)
                .with("weight", weight)
                .help("Write the weight as the scale shows it, with its unit.");
    }
}
