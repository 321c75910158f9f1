package dev.gambrel.benchmarks;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.PartReading;
import dev.gambrel.yields.cuttingtest.Scale;
import dev.gambrel.yields.cuttingtest.Weighing;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.MassTree;
import dev.gambrel.yields.reconciliation.TreeBalance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
 * 100,000 cutting tests of one specification, a thousand of them different: weights, variances, chi-square and the test of every reading. In
 * columns, where memory is that of one sheet for each thread; and as cutting tests by name, each forgotten after its verdict.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
@State(Scope.Benchmark)
public class ManySheetsBenchmark {
    private static final int SHEETS = 100_000;
    private static final int DIFFERENT = 1_000;
    private static final int PARTS = 150;
    private static final Scale BENCH = new Scale("bench", 0.005, 0, 0.002);

    private MassTree tree;
    private double[] variances;
    private double[][] sheets;
    private ExpectedYields expected;
    private List<List<PartReading>> tests;

    /** Draws the sheets. */
    @Setup
    public void prepare() {
        tree = WeighedCarcass.tree();
        variances = WeighedCarcass.variances();
        sheets = new double[DIFFERENT][];
        Arrays.setAll(sheets, i -> WeighedCarcass.readings(tree, i));
        expected = Yields.of(Sheet.of(PARTS).tree()).forTypicalCarcass().orElseThrow();
        tests = IntStream.range(0, DIFFERENT).mapToObj(this::drawn).toList();
    }

    /** The carcass and two parts in five. */
    private List<PartReading> drawn(int seed) {
        Random random = new Random(seed);
        YieldPlan plan = expected.plan();
        double carcass = expected.given().mass().value();
        List<PartReading> readings = new ArrayList<>();
        for (int v = 0; v < plan.size(); v++) {
            if (v == 0 || random.nextInt(5) < 2) {
                Node node = plan.node(v);
                double weight = carcass * plan.mean(v) + 0.002 * random.nextGaussian();
                readings.add(new PartReading(
                        v == 0 ? TreePath.ROOT : node.path(),
                        node.kind() == Kind.TRIMMED ? PartReading.State.TRIMMED : PartReading.State.WHOLE,
                        List.of(new Weighing(BENCH, weight, 1))));
            }
        }
        return readings;
    }

    /** In columns, one after the other. */
    @Benchmark
    public double columnsOnOneThread() {
        return columns(0, 1);
    }

    /** In columns, with a pair of passes for each processor. */
    @Benchmark
    public double columnsOnAllProcessors() {
        int processors = Runtime.getRuntime().availableProcessors();
        return IntStream.range(0, processors)
                .parallel()
                .mapToDouble(first -> columns(first, processors))
                .sum();
    }

    private double columns(int first, int step) {
        TreeBalance passes = new TreeBalance(tree);
        double sum = 0;
        for (int i = first; i < SHEETS; i += step) {
            passes.solve(sheets[i % DIFFERENT], variances);
            sum += passes.chiSquare();
            for (int v = 0; v < WeighedCarcass.READINGS; v++) {
                sum += passes.weight(v) + passes.variance(v) + passes.pull(v) / Math.sqrt(passes.pullVariance(v));
            }
        }
        return sum;
    }

    /** By name, one after the other: from readings of parts to the test of the sheet. */
    @Benchmark
    public double testsOnOneThread() {
        return IntStream.range(0, SHEETS).mapToDouble(this::chiSquare).sum();
    }

    /** By name, on all processors. */
    @Benchmark
    public double testsOnAllProcessors() {
        return IntStream.range(0, SHEETS)
                .parallel()
                .mapToDouble(this::chiSquare)
                .sum();
    }

    private double chiSquare(int sheet) {
        return CuttingTest.of(expected, tests.get(sheet % DIFFERENT))
                .reconciled()
                .test()
                .chiSquare();
    }
}
