package dev.gambrel.tree.rules.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.ValidRange;
import dev.gambrel.tree.inspection.EquationCode;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.function.Consumer;

/** A valid range measures what it is a range of and runs from low to high, and a residual spread is not less than nothing. */
final class PredictorRanges {
    private PredictorRanges() {}

    static void check(Estimates estimates, Consumer<Diagnostic> found) {
        List<Measure> measures = estimates.predictors().measures();
        for (int i = 0; i < measures.size(); i++) {
            check(measures.get(i), Estimates.atMeasure(i), found);
        }
        List<Equation> equations = estimates.equations();
        for (int i = 0; i < equations.size(); i++) {
            Place at = Estimates.atEstimate(i);
            equations.get(i).held().forEach(held -> checkOrder(held.range(), at, found));
            if (equations.get(i).spread() instanceof Equation.Residual.Stated stated
                    && stated.deviation().amount().signum() < 0) {
                found.accept(Diagnostic.of(TreeCode.NEGATIVE_SPREAD, at)
                        .with("spread", stated.deviation())
                        .help("Write the spread as a plain figure after ±."));
            }
        }
    }

    private static void check(Measure measure, Place at, Consumer<Diagnostic> found) {
        if (measure.range() instanceof ValidRange.Stated range) {
            Dimension wanted = measure.scale().dimension();
            if (range.low().dimension() != wanted || range.high().dimension() != wanted) {
                found.accept(Diagnostic.of(EquationCode.RANGE_OTHERWISE, at)
                        .with("measure", measure.name())
                        .with("low", range.low())
                        .with("high", range.high())
                        .with("wanted", wanted.words())
                        .help("Give the range in a unit of what is measured."));
            } else {
                checkOrder(range, at, found);
            }
        }
    }

    private static void checkOrder(ValidRange.Stated range, Place at, Consumer<Diagnostic> found) {
        boolean comparable = range.low().dimension() == range.high().dimension();
        if (comparable && range.low().compareTo(range.high()) > 0) {
            found.accept(Diagnostic.of(TreeCode.REVERSED_RANGE, at)
                    .with("low", range.low())
                    .with("high", range.high())
                    .help("Write the smaller figure first: " + range.high() + " to " + range.low() + "."));
        }
    }
}
