package dev.gambrel.benchmarks;

import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.StreamYield;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.plan.Kind;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.ToDoubleFunction;
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

/** What a carcass should give by a sheet with 500 cuts: every line and every total, each with its spread. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 15, time = 2)
@Measurement(iterations = 5, time = 1)
@Fork(1)
@State(Scope.Benchmark)
public class YieldsBenchmark {
    /** The fewest parts that have 500 cuts among them. */
    static final int PARTS = 3_076;

    private static final int NODES = 500;

    private CutTree tree;
    private Yields yields;
    private ExpectedYields ofFewer;
    private List<ToDoubleFunction<YieldRow>> figures;

    /** Makes the tree. */
    @Setup
    public void prepare() {
        tree = Sheet.of(PARTS).tree();
        yields = Yields.of(tree);
        ofFewer = Yields.of(Sheet.of(NODES).tree()).forTypicalCarcass().orElseThrow();
        figures = List.of(
                row -> row.isEnd() ? row.level() * 2.5 : 0,
                row -> row.isEnd() && row.kind() == Kind.TRIMMED ? 1 : 0,
                row -> row.isEnd() && row.kind() == Kind.BONE ? 1 : 0,
                row -> row.isEnd() && row.kind() == Kind.TRIM ? 1 : 0);
    }

    /** Mean and variance of a value by a sheet with 500 parts. */
    @Benchmark
    public double momentsOf500Parts() {
        return figures(ofFewer.figure(figures.get(0)));
    }

    /** Means and the whole covariance of four figures by a sheet with 500 parts. */
    @Benchmark
    public JointEstimate jointMomentsOf500Parts() {
        return ofFewer.figures(figures);
    }

    /** Of a specification that was made ready before. */
    @Benchmark
    public double yieldsOf500Cuts() {
        return sumOfAll(yields);
    }

    /** With the making ready. */
    @Benchmark
    public double yieldsOf500CutsFromTheTree() {
        return sumOfAll(Yields.of(tree));
    }

    private static double sumOfAll(Yields yields) {
        ExpectedYields expected = yields.forTypicalCarcass().orElseThrow();
        double sum = 0;
        for (YieldRow row : expected.rows()) {
            sum += row.allPieces().map(YieldsBenchmark::figures).orElseThrow();
        }
        for (StreamYield stream : expected.streams()) {
            sum += figures(stream.weight());
        }
        for (Outcome outcome : Outcome.values()) {
            sum += figures(expected.total(outcome));
        }
        return sum + figures(expected.products());
    }

    private static double figures(Estimate estimate) {
        return estimate.mean() + estimate.spread().variance();
    }
}
