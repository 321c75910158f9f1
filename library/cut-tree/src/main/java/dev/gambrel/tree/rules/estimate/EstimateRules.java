package dev.gambrel.tree.rules.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Predictors;
import dev.gambrel.tree.inspection.EquationCode;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Terms;
import java.util.List;
import java.util.function.Consumer;

/** All rules of estimates by equation. Where one is too long no other is asked. */
public final class EstimateRules implements Rule {
    /** The most figures and names in one equation. */
    static final int MOST_TERMS = 1_000;

    /** How many expressions may stand inside one another, so that JSON of them can be read back. */
    static final int DEEPEST = 90;

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Predictors predictors = inspection.tree().carcass().predictors();
        if (isTooLong(predictors.equations(), found)) {
            return;
        }
        Estimates estimates = Estimates.of(predictors);
        DistinctPredictors.check(estimates, found);
        KnownTerms.check(estimates, found);
        PredictorRanges.check(estimates, found);
        NoCircles.check(estimates, found);
        Dimensioning dimensioning = new Dimensioning(estimates, found);
        new EstimatedShares(estimates, dimensioning).check(inspection, found);
        Divisors.check(estimates, found);
    }

    private static boolean isTooLong(List<Equation> equations, Consumer<Diagnostic> found) {
        boolean tooLong = false;
        for (int i = 0; i < equations.size(); i++) {
            Terms terms = Terms.of(equations.get(i).expression());
            if (terms.all().size() > MOST_TERMS || terms.depth() > DEEPEST) {
                tooLong = true;
                found.accept(Diagnostic.of(EquationCode.ESTIMATE_TOO_LONG, Estimates.atEstimate(i))
                        .with("estimate", equations.get(i).name())
                        .with("found", terms.all().size())
                        .with("depth", terms.depth())
                        .with("allowed", MOST_TERMS)
                        .with("deep", DEEPEST)
                        .help("Write a part of it as an estimate of its own, and name that."));
            }
        }
        return tooLong;
    }
}
