package dev.gambrel.yields.cuttingtest;

import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Weights in balance as they are shown: rounded from the top down so that the parts of each cut add up to the cut, by the largest remainder.
 * Parts of which only the sum is known count as one. Each is within one step of its exact weight. Immutable.
 */
public final class RoundedBalance {
    private final int places;
    private final List<Long> weights;
    private final List<Long> together;

    private RoundedBalance(int places, List<Long> weights, List<Long> together) {
        this.places = places;
        this.weights = List.copyOf(weights);
        this.together = List.copyOf(together);
    }

    /**
     * Rounds the weights of a sheet.
     *
     * @param test the sheet
     * @param places after the point of kilograms, from 0 to 6
     * @return the weights as shown
     */
    public static RoundedBalance of(CuttingTest test, int places) {
        Rounding rounding = new Rounding(test, places);
        rounding.run();
        return new RoundedBalance(places, rounding.weights, rounding.together);
    }

    /**
     * The weight of a node.
     *
     * @param node a line of the plan
     * @return kilograms; of no meaning where the weight is not known
     */
    public BigDecimal weight(int node) {
        return BigDecimal.valueOf(weights.get(node), places);
    }

    /**
     * What parts weigh of which only the sum is known.
     *
     * @param cut that they are parts of
     * @return kilograms; of no meaning where there are none
     */
    public BigDecimal together(int cut) {
        return BigDecimal.valueOf(together.get(cut), places);
    }

    /** In the order of the plan, where the parts of each line follow those of the line before: a cut is rounded before its parts are. */
    private static final class Rounding {
        private final CuttingTest test;
        private final YieldPlan plan;
        private final Steps steps;
        private final List<Long> weights = new ArrayList<>();
        private final List<Long> together = new ArrayList<>();

        Rounding(CuttingTest test, int places) {
            this.test = test;
            this.plan = test.plan();
            this.steps = new Steps(places);
        }

        void run() {
            weights.add(known(0).map(steps::nearest).orElse(0L));
            for (int v = 0; v < plan.size(); v++) {
                divide(v);
            }
        }

        private Optional<Double> known(int v) {
            return test.reconciled().weight(v) instanceof Reconciled.Weight weight
                    ? Optional.of(weight.estimate().mean())
                    : Optional.empty();
        }

        private void divide(int cut) {
            List<Double> exact = new ArrayList<>();
            double open = 0;
            for (int part = plan.firstPart(cut); part < plan.firstPart(cut + 1); part++) {
                exact.add(known(part).orElse(0.0));
                if (test.reconciled().weight(part) instanceof Reconciled.OnlyTogether sum) {
                    open = sum.sum().mean();
                }
            }
            exact.add(open);
            List<Long> rounded = known(cut).isPresent() ? steps.parts(exact, weights.get(cut)) : steps.each(exact);
            weights.addAll(rounded.subList(0, rounded.size() - 1));
            together.add(rounded.get(rounded.size() - 1));
        }
    }
}
