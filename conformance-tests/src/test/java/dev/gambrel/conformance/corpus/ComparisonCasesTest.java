package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.cli.Gambrel;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The house's hogget against its revision for Harbour Table, read as a processor reads it. */
class ComparisonCasesTest {
    private static final Path MARRAM = Path.of(System.getProperty("basedir", ""))
            .toAbsolutePath()
            .resolveSibling("examples")
            .resolve("marram");

    private static String compared(String... options) {
        String before = MARRAM.resolve("hogget.cuts").toString();
        String after = MARRAM.resolve("hogget-harbour-table.cuts").toString();
        List<String> args = new ArrayList<>(List.of("compare", before, after));
        args.addAll(List.of(options));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        assertEquals(ExitStatus.FINDINGS, Gambrel.run(args, new Terminal(out, out, false)));
        return bytes.toString(StandardCharsets.UTF_8)
                .replace(before, "hogget.cuts")
                .replace(after, "hogget-harbour-table.cuts");
    }

    @Test
    void what_harbour_table_asked_for_in_autumn() {
        Corpus.hold(compared(), Corpus.folder("comparisons").resolve("harbour-table.expected"));
    }

    @Test
    void the_same_for_a_program() {
        Corpus.hold(compared("--as", "json"), Corpus.folder("comparisons").resolve("harbour-table.json"));
    }
}
