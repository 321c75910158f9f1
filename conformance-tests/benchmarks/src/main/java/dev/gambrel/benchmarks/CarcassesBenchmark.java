package dev.gambrel.benchmarks;

import dev.gambrel.tree.Basis;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.batch.BatchSums;
import dev.gambrel.yields.batch.Carcasses;
import dev.gambrel.yields.working.Working;
import java.sql.SQLException;
import java.util.Arrays;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A million carcasses through a sheet of 150 parts, on one thread: the total of each line, or every weight kept. The weights
 * of one carcass are worked out for that carcass: nothing here is the sum of the carcasses times a share.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "-Xmx8g")
@State(Scope.Benchmark)
public class CarcassesBenchmark {
    private static final int CARCASSES = 1_000_000;
    private static final int PARTS = 150;

    private DrawnCarcasses carcasses;
    private HandLoop fixed;
    private HandLoop estimated;
    private BatchPlan fixedPlan;
    private BatchPlan estimatedPlan;
    private Carcasses weighed;
    private Carcasses measured;
    private byte[] notes;
    private double[] totals;
    private double[] weights;

    /** Draws the carcasses and makes both sheets. */
    @Setup
    public void prepare() {
        carcasses = DrawnCarcasses.of(CARCASSES);
        FlatSheet flat = FlatSheet.of(
                Yields.of(Sheet.of(PARTS).tree()).forTypicalCarcass().orElseThrow());
        fixed = new HandLoop(flat);
        estimated = new HandLoop(EstimatedSheet.flat(PARTS));
        fixedPlan = BatchPlan.of(Sheet.of(PARTS).tree(), Working.AS_WRITTEN, Basis.COLD)
                .orElseThrow();
        estimatedPlan = BatchPlan.of(EstimatedSheet.of(PARTS), Working.AS_WRITTEN, Basis.COLD)
                .orElseThrow();
        weighed = Carcasses.weighed(carcasses.kilograms());
        measured = new Carcasses(carcasses.kilograms(), new int[0][], new double[][] {carcasses.backFat()});
        notes = new byte[CARCASSES];
        totals = new double[flat.size()];
        weights = new double[flat.size() * CARCASSES];
    }

    /** The array form with three shares that follow from the back fat: sums and spreads of each line. */
    @Benchmark
    public BatchSums estimatedSums() {
        BatchSums sums = estimatedPlan.sums();
        estimatedPlan.worker().add(measured, 0, CARCASSES, notes, sums);
        return sums;
    }

    /** The array form with three shares that follow from the back fat, every weight kept. */
    @Benchmark
    public double[] estimatedWeights() {
        estimatedPlan.worker().weights(measured, 0, CARCASSES, notes, weights, 0);
        return weights;
    }

    /** The array form, sums and spreads of each line. With fixed shares they follow from the sum of the carcasses, so this says
     * nothing of a loop over lines. */
    @Benchmark
    public BatchSums sums() {
        BatchSums sums = fixedPlan.sums();
        fixedPlan.worker().add(weighed, 0, CARCASSES, notes, sums);
        return sums;
    }

    /** The array form, every weight kept. */
    @Benchmark
    public double[] weights() {
        fixedPlan.worker().weights(weighed, 0, CARCASSES, notes, weights, 0);
        return weights;
    }

    /** The loop, totals only. */
    @Benchmark
    public double[] loopTotals() {
        Arrays.fill(totals, 0);
        fixed.totals(carcasses.kilograms(), totals);
        return totals;
    }

    /** The loop, every weight kept. */
    @Benchmark
    public double[] loopKeep() {
        fixed.keep(carcasses.kilograms(), weights);
        return weights;
    }

    /** The loop with three shares that follow from the back fat, totals only. */
    @Benchmark
    public double[] loopEstimatedTotals() {
        Arrays.fill(totals, 0);
        estimated.totals(carcasses, totals);
        return totals;
    }

    /** The loop with three shares that follow from the back fat, every weight kept. */
    @Benchmark
    public double[] loopEstimatedKeep() {
        estimated.keep(carcasses, weights);
        return weights;
    }

    /** The memory alone: as many numbers written. */
    @Benchmark
    public double[] fill() {
        Arrays.fill(weights, carcasses.kilograms()[0]);
        return weights;
    }

    /** A column store in SQL on every core, totals only. */
    @Benchmark
    public double[] sqlTotals(Database database) throws SQLException {
        return database.fixed.totals();
    }

    /** A column store in SQL on every core, three shares that follow from the back fat, totals only. */
    @Benchmark
    public double[] sqlEstimatedTotals(Database database) throws SQLException {
        return database.estimated.estimatedTotals();
    }

    /** A column store in SQL on every core, every weight kept in a table. */
    @Benchmark
    public void sqlKeep(Database database) throws SQLException {
        database.fixed.keep();
    }

    /** A workbook that a thousandth of the carcasses goes through; a million would take a thousand times as long. */
    @Benchmark
    public double[] workbookTotalsOfAThousandth(Workbook workbook) {
        Arrays.fill(totals, 0);
        for (int r = 0; r < CARCASSES / 1000; r++) {
            workbook.sheet.totals(carcasses.kilograms()[r], totals);
        }
        return totals;
    }

    /** The carcasses in a table of their own for each sheet. */
    @State(Scope.Benchmark)
    public static class Database {
        private DuckDbTotals fixed;
        private DuckDbTotals estimated;

        /** Makes the tables, and sees that they give what the loop gives. */
        @Setup
        public void prepare(CarcassesBenchmark benchmark) throws SQLException {
            int cores = Runtime.getRuntime().availableProcessors();
            fixed = new DuckDbTotals(flat(), CARCASSES, cores);
            estimated = new DuckDbTotals(EstimatedSheet.flat(PARTS), CARCASSES, cores);
            same(benchmark.loopTotals(), fixed.totals());
            same(benchmark.loopEstimatedTotals(), estimated.estimatedTotals());
        }

        private static void same(double[] expected, double[] found) {
            for (int v = 0; v < expected.length; v++) {
                if (Math.abs(expected[v] - found[v]) > 1e-9 * expected[0]) {
                    throw new IllegalStateException("line " + v + ": " + expected[v] + " and " + found[v]);
                }
            }
        }

        /** Lets go of both. */
        @TearDown
        public void close() throws SQLException {
            fixed.close();
            estimated.close();
        }
    }

    /** The sheet as a workbook. */
    @State(Scope.Benchmark)
    public static class Workbook {
        private Spreadsheet sheet;

        /** Writes the formulas. */
        @Setup
        public void prepare() {
            sheet = new Spreadsheet(flat());
        }

        /** Lets go of it. */
        @TearDown
        public void close() {
            sheet.close();
        }
    }

    private static FlatSheet flat() {
        return FlatSheet.of(
                Yields.of(Sheet.of(PARTS).tree()).forTypicalCarcass().orElseThrow());
    }
}
