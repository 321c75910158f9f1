package dev.gambrel.batches;

import dev.gambrel.batches.csv.Chunk;
import dev.gambrel.batches.csv.CsvBytes;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.YieldCode;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.batch.BatchSums;
import dev.gambrel.yields.batch.BatchWorker;
import dev.gambrel.yields.batch.Carcasses;
import dev.gambrel.yields.estimate.MeasurementCode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Some rows worked out: what is written of them, what they add up to, and what was found. In the hands of one thread at a time. */
final class ChunkWork {
    private static final List<Code> WARNINGS =
            List.of(YieldCode.OUTSIDE_BAND, MeasurementCode.OUTSIDE_RANGE, MeasurementCode.RANGE_NOT_CHECKED);
    /** How many weights are held at once, at 8 bytes each. */
    private static final int MOST_WEIGHTS = 1 << 18;

    private static final String BEGINS_A_LINE = ", line ";

    private final BatchPlan plan;
    private final BatchOrder order;
    private final Sheet sheet;
    private final String file;
    private final Chunk chunk;
    private final RowReader reader;
    private final RowWriter writer;
    private final Carcasses carcasses;
    private final byte[] notes;
    private final BatchWorker worker;
    private final double[] weights;
    private final CsvBytes out = new CsvBytes();
    private final CsvBytes refused = new CsvBytes();
    private final Tally tally;
    private final Set<Code> told = new HashSet<>();
    private final List<BatchSums> sums = new ArrayList<>(1);
    private final int[] done = new int[1];

    ChunkWork(BatchPlan plan, BatchOrder order, Sheet sheet, String file) {
        this.plan = plan;
        this.order = order;
        this.sheet = sheet;
        this.file = file;
        reader = new RowReader(sheet, order);
        writer = new RowWriter(plan, order, sheet);
        int rows = wholeBlocks(Math.min(order.limits().rowsTogether(), MOST_WEIGHTS / Math.max(1, writer.columns())));
        chunk = new Chunk(rows, BatchWorker.BLOCK, order.limits().rowCharacters());
        notes = new byte[rows];
        worker = plan.worker();
        weights = new double[rows * writer.columns()];
        tally = new Tally(order.limits().shown());
        int[][] grades = sheet.grades().stream()
                .map(c -> new int[c.isEmpty() ? 0 : rows])
                .toArray(int[][]::new);
        double[][] readings = sheet.readings().stream()
                .map(c -> new double[c.isEmpty() ? 0 : rows])
                .toArray(double[][]::new);
        carcasses = new Carcasses(new double[rows], grades, readings);
    }

    /** Rows are added up in blocks, which must not be cut. */
    private static int wholeBlocks(int rows) {
        return (Math.max(0, rows - 1) / BatchWorker.BLOCK + 1) * BatchWorker.BLOCK;
    }

    Chunk chunk() {
        return chunk;
    }

    /** Tells what was found of the rows before, so that no more of it is told in full than will be kept. */
    void after(Tally before) {
        told.clear();
        WARNINGS.stream().filter(code -> !before.keeps(code)).forEach(told::add);
    }

    /** Works the rows of the chunk out; nothing is kept of what was in it before. */
    ChunkWork run() {
        out.clear();
        refused.clear();
        tally.clear();
        sums.clear();
        int rows = chunk.rows();
        for (int row = 0; row < rows; row++) {
            boolean isSound = reader.read(chunk, row, carcasses);
            notes[row] = isSound ? 0 : BatchWorker.REFUSED;
        }
        writer.work(worker, carcasses, rows, notes, weights);
        done[0] = order.stopsAtFirst() ? upToFirstRefused(rows) : rows;
        BatchSums all = plan.sums();
        worker.add(carcasses, 0, done[0], notes, all);
        sums.add(all);
        for (int row = 0; row < done[0]; row++) {
            if ((notes[row] & BatchWorker.REFUSED) != 0) {
                refuse(row);
            } else {
                warn(row);
                writer.write(chunk, row, carcasses.kilograms()[row], weights, out);
            }
        }
        return this;
    }

    private int upToFirstRefused(int rows) {
        for (int row = 0; row < rows; row++) {
            if ((notes[row] & BatchWorker.REFUSED) != 0) {
                return row + 1;
            }
        }
        return rows;
    }

    private Place place(int row) {
        return new Place.InFile(file + BEGINS_A_LINE + chunk.line(row));
    }

    private void refuse(int row) {
        Diagnostic why = reader.read(chunk, row, carcasses) ? evaluated(row) : reader.finding(chunk, row, place(row));
        tally.count(why.code(), 1);
        tally.keep(why);
        refused.number(chunk.line(row));
        refused.word(why.code().id());
        refused.word(why.message());
        refused.word(chunk.text(), chunk.begin(row), chunk.end(row));
        refused.endLine();
    }

    private Diagnostic evaluated(int row) {
        return alone(row).stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .findFirst()
                .orElseThrow();
    }

    private List<Diagnostic> alone(int row) {
        Unit unit = ((Column.Kind.Figures) sheet.weight().kind())
                .headed().stream().findFirst().orElse(Unit.KILOGRAM);
        return plan.alone(carcasses, row, unit).diagnostics().stream()
                .map(finding -> finding.at(place -> place(row)))
                .toList();
    }

    private void warn(int row) {
        if (notes[row] != 0) {
            warn(row, BatchWorker.OUTSIDE_BAND, YieldCode.OUTSIDE_BAND);
            warn(row, BatchWorker.OUTSIDE_RANGE, MeasurementCode.OUTSIDE_RANGE);
            warn(row, BatchWorker.RANGE_NOT_CHECKED, MeasurementCode.RANGE_NOT_CHECKED);
        }
    }

    private void warn(int row, byte note, Code code) {
        if ((notes[row] & note) != 0) {
            tally.count(code, 1);
            if (!told.contains(code) && tally.keeps(code)) {
                alone(row).stream()
                        .filter(finding -> finding.code() == code)
                        .findFirst()
                        .ifPresent(tally::keep);
            }
        }
    }

    CsvBytes out() {
        return out;
    }

    CsvBytes refused() {
        return refused;
    }

    Tally tally() {
        return tally;
    }

    BatchSums sums() {
        return sums.get(0);
    }

    /** How many rows were worked out or refused: all, unless the first refused ends the batch. */
    int done() {
        return done[0];
    }

    /** Whether a row was refused and the batch ends with it. */
    boolean isStopped() {
        return order.stopsAtFirst() && refused.length() > 0;
    }
}
