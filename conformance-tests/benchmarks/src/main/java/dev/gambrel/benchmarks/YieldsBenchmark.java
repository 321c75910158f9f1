package dev.gambrel.benchmarks;

import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.StreamYield;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.figure.Estimate;
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

    private CutTree tree;
    private Yields yields;

    /** Makes the tree. */
    @Setup
    public void prepare() {
        tree = Sheet.of(PARTS).tree();
        yields = Yields.of(tree);
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
