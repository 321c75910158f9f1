package dev.gambrel.batches;

import dev.gambrel.batches.csv.Chunk;
import dev.gambrel.batches.csv.CsvBytes;
import dev.gambrel.batches.csv.Encoding;
import dev.gambrel.batches.csv.RowLines;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.batch.BatchSums;
import dev.gambrel.yields.working.Working;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A file of carcasses worked out against one specification.
 *
 * <pre>{@code
 * BatchResult result = Batch.run(tree, Working.AS_WRITTEN, BatchOrder.PLAIN, BatchFiles.reading("kills.csv", in).writing(out))
 *         .orElseThrow();
 * }</pre>
 *
 * <p>The first row is the heading: the carcass weight with its basis and unit, such as "cold weight (kg)", and by their names the
 * grades and measures of the specification. Every other row is one carcass; it stands on one line. A row that cannot be read, or
 * that the specification refuses, is counted by its reason and ends nothing, unless that is asked for. Memory does not grow with the
 * file, and what is written is the same bytes whatever the number of threads.
 */
public final class Batch {
    private final BatchOrder order;
    private final BatchFiles files;
    private final BatchPlan plan;
    private final Sheet sheet;
    private final Tally tally;
    private final BatchSums sums;
    private final List<Long> rows = new ArrayList<>(List.of(0L));

    private Batch(BatchOrder order, BatchFiles files, BatchPlan plan, Sheet sheet) {
        this.order = order;
        this.files = files;
        this.plan = plan;
        this.sheet = sheet;
        this.tally = new Tally(order.limits().shown());
        this.sums = plan.sums();
    }

    /**
     * Works a file out.
     *
     * @param tree a tree in which {@link dev.gambrel.tree.rules.TreeRules} finds no error
     * @param working how the carcasses are worked; a grade given here is not read from the file
     * @param order what is asked for
     * @param files where it comes from and goes to
     * @return what came of it; or errors of {@link BatchCode} about the heading, of {@link dev.gambrel.yields.YieldCode} about the
     *     basis, or of {@link dev.gambrel.yields.working.WorkingCode}
     * @throws IOException if a file cannot be read or written
     */
    public static Result<BatchResult> run(CutTree tree, Working working, BatchOrder order, BatchFiles files)
            throws IOException {
        RowLines lines = new RowLines(Encoding.reader(files.in()));
        Chunk first = new Chunk(1, 1, order.limits().rowCharacters());
        lines.fill(first);
        Result<Heading> heading = new HeadingReader(files.name(), order.limits())
                .read(first, tree.carcass().basis());
        if (heading.value().isEmpty()) {
            return Result.failed(heading.diagnostics());
        }
        Heading read = heading.value().get();
        Result<BatchPlan> plan = BatchPlan.of(tree, working, read.basis());
        if (plan.value().isEmpty()) {
            return Result.failed(plan.diagnostics());
        }
        Result<Sheet> sheet = Sheet.of(read, plan.value().get(), working, order, files.name());
        if (sheet.value().isEmpty()) {
            return Result.failed(sheet.diagnostics());
        }
        return Result.of(
                new Batch(order, files, plan.value().get(), sheet.value().get()).run(lines), List.<Diagnostic>of());
    }

    private BatchResult run(RowLines lines) throws IOException {
        CsvBytes headings = new CsvBytes();
        new RowWriter(plan, order, sheet).heading(headings);
        headings.writeTo(files.out());
        headings.clear();
        List.of("line", "code", "reason", "row").forEach(headings::word);
        headings.endLine();
        headings.writeTo(files.refused());
        boolean isStopped;
        try (Crew crew = new Crew(order.threads(), () -> new ChunkWork(plan, order, sheet, files.name()))) {
            isStopped = crew.work(lines, new InOrder());
        }
        return new BatchResult(
                rows.get(0),
                new BatchResult.Counts(tally.counts(Severity.ERROR), tally.counts(Severity.WARNING)),
                tally.shown(),
                sheet.unused(),
                plan,
                sums,
                isStopped);
    }

    /** Takes over what came of some rows, in the order of the file; false if the batch ends with them. */
    private boolean take(ChunkWork work) throws IOException {
        work.out().writeTo(files.out());
        work.refused().writeTo(files.refused());
        tally.add(work.tally());
        sums.add(work.sums());
        rows.set(0, rows.get(0) + work.done());
        files.progress().rows(rows.get(0));
        return !work.isStopped();
    }

    /** What is done with the rows, in the order of the file. */
    private final class InOrder implements Crew.Taking {
        @Override
        public void ready(ChunkWork work) {
            work.after(tally);
        }

        @Override
        public boolean take(ChunkWork work) throws IOException {
            return Batch.this.take(work);
        }
    }
}
