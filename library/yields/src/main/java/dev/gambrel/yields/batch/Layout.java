package dev.gambrel.yields.batch;

import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The lines of a plan as columns, with those apart that differ from carcass to carcass.
 *
 * @param above the line above each
 * @param share the share of the line above; a placeholder where it differs
 * @param shareVariance its variance, NaN where not stated
 * @param worked how much of the pieces above are worked in this way; a placeholder where it differs
 * @param mean the share of what was weighed; a placeholder where it differs
 * @param differing the lines of which it differs, parents first
 */
record Layout(int[] above, double[] share, double[] shareVariance, double[] worked, double[] mean, int[] differing) {
    static Layout of(YieldPlan plan, Map<?, Double> worked, List<Decision> decisions) {
        int n = plan.size();
        boolean[] differs = new boolean[n];
        decisions.forEach(decision -> {
            for (int v = plan.firstPart(decision.cut()); v < plan.firstPart(decision.cut() + 1); v++) {
                differs[v] = true;
            }
        });
        int[] above = new int[n];
        double[] factors = new double[n];
        for (int v = 0; v < n; v++) {
            above[v] = Math.max(0, plan.node(v).above());
            differs[v] |= differs[above[v]];
            boolean isCut = plan.node(v).kind() == Kind.CUT;
            factors[v] = isCut ? worked.getOrDefault(plan.node(v).path(), 1.0) : 1;
        }
        return new Layout(
                above,
                IntStream.range(0, n).mapToDouble(plan::share).toArray(),
                IntStream.range(0, n).mapToDouble(plan::shareVariance).toArray(),
                factors,
                IntStream.range(0, n).mapToDouble(plan::mean).toArray(),
                IntStream.range(0, n).filter(v -> differs[v]).toArray());
    }
}
