package dev.gambrel.benchmarks;

import dev.gambrel.yields.reconciliation.MassTree;
import dev.gambrel.yields.reconciliation.Readings;
import dev.gambrel.yields.reconciliation.Reconciliation;
import dev.gambrel.yields.reconciliation.TreeBalance;
import dev.gambrel.yields.reconciliation.error.Suspects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A cutting test of 150 nodes with 60 readings brought into balance: weights, variances and the test of every reading; beside the same by a
 * dense least-squares solution.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
@State(Scope.Benchmark)
public class ReconciliationBenchmark {
    private MassTree tree;
    private double[] variance;
    private double[] sheet;
    private Readings readings;
    private TreeBalance passes;
    private DenseReconciliation dense;

    /** Draws the sheets. */
    @Setup
    public void prepare() {
        tree = WeighedCarcass.tree();
        variance = WeighedCarcass.variances();
        sheet = WeighedCarcass.readings(tree, 0);
        readings = Readings.of(sheet, variance);
        passes = new TreeBalance(tree);
        dense = new DenseReconciliation(tree, sheet);
    }

    /** One sheet in columns that are used again. */
    @Benchmark
    public double oneSheetInColumns() {
        return solved();
    }

    /** One sheet as a value, all made anew. */
    @Benchmark
    public Reconciliation oneSheetAsAValue() {
        return Reconciliation.of(tree, readings);
    }

    /** One sheet and what may be wrong with it. */
    @Benchmark
    public Suspects oneSheetWithItsSuspects() {
        return Suspects.of(Reconciliation.of(tree, readings), 0.05);
    }

    /** One sheet by QR of 60 readings and 42 unknowns. */
    @Benchmark
    public double[][] oneSheetDenseByQr() {
        return dense.solve(sheet, variance);
    }

    private double solved() {
        passes.solve(sheet, variance);
        double sum = passes.chiSquare();
        for (int v = 0; v < WeighedCarcass.READINGS; v++) {
            sum += passes.weight(v) + passes.variance(v) + passes.pull(v) / Math.sqrt(passes.pullVariance(v));
        }
        return sum;
    }
}
