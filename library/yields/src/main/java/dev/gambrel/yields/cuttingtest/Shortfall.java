package dev.gambrel.yields.cuttingtest;

import dev.gambrel.yields.cuttingtest.WhereItWent.Sort;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Reconciled;
import dev.gambrel.yields.reconciliation.error.Sidak;
import java.util.Optional;

/**
 * Less meat than was expected, by more than the scales and the spread of the specification explain. Where it lies instead is told by
 * {@link WhereItWent}.
 *
 * @param missing kilograms, with both standard deviations taken together
 */
public record Shortfall(Estimate missing) {
    /**
     * Looks for one.
     *
     * @param test the sheet
     * @param level the chance that meat is said to be missing, or could as well be said to be too much, where all is as the specification says,
     *     such as 0.05
     * @return nothing where the meat is as expected or more; or its share is not stated, or some spread is not
     */
    public static Optional<Shortfall> of(CuttingTest test, double level) {
        YieldPlan plan = test.plan();
        boolean isStated = true;
        boolean[] isMeat = new boolean[plan.size()];
        boolean[] isReached = new boolean[plan.size()];
        for (int v = 0; v < plan.size(); v++) {
            isReached[v] = (v == 0 || isReached[plan.node(v).above()])
                    && test.reconciled().weight(v) instanceof Reconciled.Weight;
            isMeat[v] = isReached[v] && plan.isEnd(v) && Sort.of(plan.node(v).kind()) == Sort.MEAT;
            isStated &= !isMeat[v] || plan.isStated(v);
        }
        if (!isStated || !isReached[0]) {
            return Optional.empty();
        }
        Estimate actual = test.reconciled().figure(v -> isMeat[v] ? 1 : 0);
        double carcass =
                ((Reconciled.Weight) test.reconciled().weight(0)).estimate().mean();
        Estimate expected = plan.figure(v -> isMeat[v] ? 1 : 0).times(carcass);
        Estimate missing = Estimate.of(
                expected.mean() - actual.mean(),
                expected.spread().variance() + actual.spread().variance());
        return missing.mean()
                        > Sidak.critical(1, level) * Math.sqrt(missing.spread().variance())
                ? Optional.of(new Shortfall(missing))
                : Optional.empty();
    }
}
