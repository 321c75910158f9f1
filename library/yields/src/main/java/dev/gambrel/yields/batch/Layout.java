package dev.gambrel.yields.batch;

import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The lines of a plan as columns.
 *
 * @param share the share of the line above; a placeholder where it differs from carcass to carcass
 * @param shareVariance its variance, NaN where not stated
 * @param worked how much of the pieces above are worked in this way; a placeholder where it differs
 * @param branches in which lines hang together
 */
record Layout(double[] share, double[] shareVariance, double[] worked, Branches branches) {
    static Layout of(YieldPlan plan, Map<?, Double> worked, List<Decision> decisions) {
        int n = plan.size();
        double[] factors = new double[n];
        for (int v = 0; v < n; v++) {
            boolean isCut = plan.node(v).kind() == Kind.CUT;
            factors[v] = isCut ? worked.getOrDefault(plan.node(v).path(), 1.0) : 1;
        }
        return new Layout(
                IntStream.range(0, n).mapToDouble(plan::share).toArray(),
                IntStream.range(0, n).mapToDouble(plan::shareVariance).toArray(),
                factors,
                Branches.of(plan, decisions));
    }
}
