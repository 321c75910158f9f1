package dev.gambrel.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.yields.reconciliation.MassTree;
import dev.gambrel.yields.reconciliation.TreeBalance;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** What is measured side by side gives the same. */
class ReconciliationBenchmarkTest {
    @Test
    void thePassesAndTheDenseSolutionAgree() {
        MassTree tree = WeighedCarcass.tree();
        double[] variance = WeighedCarcass.variances();
        TreeBalance passes = new TreeBalance(tree);
        for (long seed = 0; seed < 20; seed++) {
            double[] reading = WeighedCarcass.readings(tree, seed);
            assertEquals(
                    60, Arrays.stream(reading).filter(y -> !Double.isNaN(y)).count());
            DenseReconciliation dense = new DenseReconciliation(tree, reading);
            double[][] found = dense.solve(reading, variance);
            passes.solve(reading, variance);
            assertEquals(18, passes.degreesOfFreedom());
            for (int i = 0; i < found[0].length; i++) {
                int v = dense.weighed()[i];
                assertEquals(found[0][i], passes.weight(v), 1e-12 * reading[0]);
                assertEquals(1, passes.variance(v) / found[1][i], 1e-9);
                if (passes.pullVariance(v) > 0) {
                    assertEquals(found[2][i], passes.pull(v) / Math.sqrt(passes.pullVariance(v)), 1e-7);
                }
            }
        }
    }
}
