package dev.gambrel.fuzzing;

import dev.gambrel.batches.Batch;
import dev.gambrel.batches.BatchFiles;
import dev.gambrel.batches.BatchLimits;
import dev.gambrel.batches.BatchOrder;
import dev.gambrel.batches.BatchResult;
import dev.gambrel.batches.Each;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.working.Working;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A file of carcasses: each row is worked out or refused, and what is written is text that no spreadsheet takes for a formula. */
public final class CarcassesTarget {
    private static final CutTree TREE = new SpecCompiler()
            .compile(new SourceText("batch.cuts", """
                    language 1
                    use "catalogue:sheep"
                    specification "Marram hogget" revision 3 for sheep
                    carcass cold, 12 kg to 30 kg
                    from warm to cold, loss chill shrink 2.0 % ± 0.4 %
                    grade season, summer, winter
                    measure depth, in mm, 1 mm to 40 mm
                    measure muscling, 1 = thin, 2 = average, 3 = thick
                    stream mince, saleable
                    stream diced, saleable
                    estimate legs = 38 % - 0.4 % per mm × depth + 1 % × muscling, ± 0.9 %
                    cut leg, two per carcass, estimated by legs
                    cut shoulder, two per carcass, 22 % ± 1 % {
                      worked as winter joint, when season is winter
                      worked as summer cut, when season is summer -> diced
                    }
                    rest -> mince
                    """), Sources.none())
            .orElseThrow()
            .tree();

    private static final BatchOrder PLAIN =
            BatchOrder.PLAIN.writing(Each.LINES).carrying(TradeName.of("tag")).within(new BatchLimits(512, 12, 8, 3));

    private CarcassesTarget() {}

    /**
     * Holds one file to it.
     *
     * @param file any bytes
     */
    public static void fuzzerTestOneInput(byte[] file) {
        Run run = Run.of(file, PLAIN);
        FindingsHold.all(run.result().diagnostics());
        run.result().value().ifPresent(result -> {
            FindingsHold.all(result.shown());
            Holds.isSame(
                    result.rows(), result.sums().carcasses() + result.refused(), "the rows and what became of them");
            Holds.isSame(result.sums().carcasses(), lines(run.out()), "the carcasses and what is written");
            Holds.isSame(result.refused(), lines(run.refused()), "the refused and what is written");
        });
        CellsHold.all(run.out());
        CellsHold.all(run.refused());
        Run other = Run.of(file, PLAIN.within(new BatchLimits(512, 12, 3, 3)));
        Holds.isSame(run.out(), other.out(), "what is written a few rows at a time");
        Holds.isSame(run.refused(), other.refused(), "what is refused a few rows at a time");
    }

    private static long lines(String csv) {
        return csv.lines().count() - 1;
    }

    /** What came of a file, with what was written. */
    private record Run(Result<BatchResult> result, String out, String refused) {
        static Run of(byte[] file, BatchOrder order) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream refused = new ByteArrayOutputStream();
            try {
                Result<BatchResult> result = Batch.run(
                        TREE,
                        Working.AS_WRITTEN,
                        order,
                        BatchFiles.reading("kills.csv", new ByteArrayInputStream(file))
                                .writing(out)
                                .refusing(refused));
                return new Run(result, out.toString(StandardCharsets.UTF_8), refused.toString(StandardCharsets.UTF_8));
            } catch (IOException notInMemory) {
                throw new UncheckedIOException(notInMemory);
            }
        }
    }
}
