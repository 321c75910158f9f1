package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import dev.gambrel.yields.batch.BatchTotal;
import dev.gambrel.yields.working.Working;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever stands in a file of carcasses, every row is worked out or refused, and always the same. */
class CarcassFileLaws {
    private static final CutTree TREE = compiled("""
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
            """);

    private static CutTree compiled(String text) {
        return new SpecCompiler()
                .compile(new SourceText("batch.cuts", text), Sources.none())
                .orElseThrow()
                .tree();
    }

    /** What came of a file, with what was written. */
    private record Run(Result<BatchResult> result, byte[] out, byte[] refused) {
        static Run of(byte[] file, BatchOrder order) throws IOException {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream refused = new ByteArrayOutputStream();
            Result<BatchResult> result = Batch.run(
                    TREE,
                    Working.AS_WRITTEN,
                    order,
                    BatchFiles.reading("kills.csv", new ByteArrayInputStream(file))
                            .writing(out)
                            .refusing(refused));
            return new Run(result, out.toByteArray(), refused.toByteArray());
        }

        static long rows(byte[] csv) {
            return new String(csv, StandardCharsets.UTF_8).lines().count() - 1;
        }
    }

    private static final String HEADING = "tag,cold weight (kg),season,depth (mm),muscling,remarks\n";

    private static final String[] CELLS = {
        "22.4",
        "\"21,9\"",
        "winter",
        "summer",
        "thin",
        "thick",
        "2",
        "12",
        "12 mm",
        "0",
        "-1",
        "",
        "\"",
        "=1+1",
        "47 lb 6 oz",
        "1,234",
        "NaN",
        "1e9",
        "\u00e9",
        "99999",
        "300",
        "\r",
        "\n"
    };

    private static String likely(int i) {
        String season = i % 9 == 0 ? "spring" : "winter";
        return "ewe " + i + "," + (15 + i % 130 / 10.0) + "," + season + "," + i % 45 + ",average,";
    }

    @Provide
    Arbitrary<byte[]> bytes() {
        Arbitrary<String> cells =
                Arbitraries.oneOf(Arbitraries.of(CELLS), Arbitraries.strings().ofMaxLength(5));
        Arbitrary<String> rows = cells.list().ofMinSize(4).ofMaxSize(7).map(row -> String.join(",", row));
        Arbitrary<String> likely = Arbitraries.integers().between(0, 999).map(CarcassFileLaws::likely);
        Arbitrary<byte[]> files = Arbitraries.oneOf(rows, likely, likely)
                .list()
                .ofMaxSize(200)
                .map(all -> (HEADING + String.join("\n", all)).getBytes(StandardCharsets.UTF_8));
        Arbitrary<byte[]> spoilt =
                Arbitraries.longs().flatMap(seed -> files.map(file -> spoil(file, new Random(seed))));
        return Arbitraries.oneOf(files, spoilt);
    }

    private static byte[] spoil(byte[] file, Random random) {
        byte[] spoilt = file.clone();
        for (int i = 0; i < 5; i++) {
            spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
        }
        return spoilt;
    }

    @Property(tries = 300)
    void every_row_is_worked_out_or_refused(@ForAll("bytes") byte[] file) throws IOException {
        Run run = Run.of(file, BatchOrder.PLAIN);
        if (run.result().value().isEmpty()) {
            assertFalse(run.result().diagnostics().isEmpty());
            return;
        }
        BatchResult result = run.result().value().get();
        assertEquals(result.rows(), result.sums().carcasses() + result.refused());
        assertEquals(result.sums().carcasses(), Run.rows(run.out()));
        assertEquals(result.refused(), Run.rows(run.refused()));
        double outcomes = 0;
        for (int t = 0; t < result.plan().totals().size(); t++) {
            outcomes += result.plan().totals().get(t) instanceof BatchTotal.OfOutcome
                    ? result.sums().total(t).sum()
                    : 0;
        }
        double weighed = result.sums().line(0).sum();
        assertEquals(weighed, outcomes, 1e-12 * weighed);
    }

    @Property(tries = 60)
    void threads_and_rows_taken_together_change_nothing(@ForAll("bytes") byte[] file) throws IOException {
        BatchOrder order = BatchOrder.PLAIN.writing(Each.LINES);
        Run alone = Run.of(file, order);
        for (int threads : new int[] {1, 2, 3, 8}) {
            for (int together : new int[] {1, 64, 100, 4096}) {
                BatchLimits limits = new BatchLimits(4096, 256, together, 3);
                assertSame(alone, Run.of(file, order.onThreads(threads).within(limits)));
            }
        }
    }

    @Example
    void threads_and_rows_taken_together_change_nothing_of_a_long_file() throws IOException {
        StringBuilder file = new StringBuilder(HEADING);
        new Random(7).ints(10_000, 0, 1000).forEach(i -> file.append(likely(i)).append('\n'));
        byte[] bytes = file.toString().getBytes(StandardCharsets.UTF_8);
        Run alone = Run.of(bytes, BatchOrder.PLAIN);
        for (int threads : new int[] {1, 2, 3, 8}) {
            for (int together : new int[] {1, 100, 1000, 20_000}) {
                BatchLimits limits = new BatchLimits(4096, 256, together, 3);
                assertSame(
                        alone, Run.of(bytes, BatchOrder.PLAIN.onThreads(threads).within(limits)));
            }
        }
    }

    private static void assertSame(Run one, Run other) {
        assertArrayEquals(one.out(), other.out());
        assertArrayEquals(one.refused(), other.refused());
        assertEquals(one.result().value().isPresent(), other.result().value().isPresent());
        if (one.result().value().isPresent()) {
            BatchResult a = one.result().value().get();
            BatchResult b = other.result().value().get();
            assertEquals(a.rows(), b.rows());
            assertEquals(a.counts(), b.counts());
            assertEquals(a.shown(), b.shown());
            for (int v = 0; v < a.plan().size(); v++) {
                assertEquals(a.sums().line(v), b.sums().line(v));
            }
            for (int t = 0; t < a.plan().totals().size(); t++) {
                assertEquals(a.sums().total(t), b.sums().total(t));
            }
        }
    }

    @Property(tries = 100)
    void the_first_row_refused_ends_the_batch_where_that_is_asked(@ForAll("bytes") byte[] file) throws IOException {
        Run all = Run.of(file, BatchOrder.PLAIN);
        Run one = Run.of(file, BatchOrder.PLAIN.stoppingAtFirst());
        Run other =
                Run.of(file, BatchOrder.PLAIN.stoppingAtFirst().onThreads(3).within(new BatchLimits(4096, 256, 1, 3)));
        assertSame(one, other);
        if (one.result().value().isPresent()) {
            BatchResult stopped = one.result().value().get();
            boolean hasRefused = all.result().value().get().refused() > 0;
            assertEquals(hasRefused, stopped.isStopped());
            assertEquals(hasRefused ? 1 : 0, stopped.refused());
            assertEquals(stopped.rows(), stopped.sums().carcasses() + stopped.refused());
        }
    }

    @Property(tries = 300)
    void no_bytes_are_too_much(@ForAll byte[] file) throws IOException {
        BatchOrder order = BatchOrder.PLAIN.carrying(TradeName.of("tag"));
        Run run = Run.of(file, order);
        assertTrue(
                run.result().value().isPresent() || !run.result().diagnostics().isEmpty());
        assertEquals(
                List.of(),
                run.result().value().map(r -> r.unused()).orElse(List.of()).stream()
                        .filter("tag"::equals)
                        .toList());
    }
}
