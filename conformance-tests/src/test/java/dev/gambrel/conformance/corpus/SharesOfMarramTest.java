package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.gambrel.cli.Gambrel;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the twelve invented sheets say of the house's own shares, and what becomes of its specification. */
class SharesOfMarramTest {
    private static final Path EXAMPLES = Path.of(System.getProperty("basedir", ""), "..", "examples");
    private static final Pattern FIGURES_AND_SOURCES =
            Pattern.compile("[0-9.]+ % ± [0-9.]+ %|, source (house|cutting) tests|\nsource cutting tests, measured .*");

    @TempDir
    Path folder;

    private record Printed(ExitStatus status, String out, String err) {}

    @BeforeEach
    void a_copy_of_the_house() throws IOException {
        for (String file : List.of("hogget.cuts", "streams.cuts")) {
            Files.copy(EXAMPLES.resolve("marram").resolve(file), folder.resolve(file));
        }
    }

    private Printed shares(String... more) throws IOException {
        List<String> args =
                new ArrayList<>(List.of("shares", folder.resolve("hogget.cuts").toString(), "--sheet"));
        try (Stream<Path> sheets = Files.list(EXAMPLES.resolve("weigh-sheets"))) {
            sheets.map(Path::toString)
                    .filter(sheet -> sheet.endsWith(".csv"))
                    .sorted()
                    .forEach(args::add);
        }
        args.addAll(List.of(more));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        ExitStatus status = Gambrel.run(args, new Terminal(stream(out), stream(err), false));
        return new Printed(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private String hogget() throws IOException {
        return Files.readString(folder.resolve("hogget.cuts"));
    }

    @Test
    void they_print_as_expected() throws IOException {
        Path expected = Corpus.folder("shares");
        Printed text = shares();
        Corpus.hold(text.err() + text.out(), expected.resolve("marram.txt.expected"));
        Corpus.hold(
                shares("--mean", "ratios", "--prior", "12").out(), expected.resolve("marram-with-prior.txt.expected"));
        Corpus.hold(shares("--as", "json").out(), expected.resolve("marram.json.expected"));
        assertEquals(ExitStatus.FINE, text.status());
    }

    @Test
    void the_two_faulty_sheets_are_left_out_and_named() throws IOException {
        String err = shares().err();
        assertTrue(err.contains("G2301 (sheet-left-out) in hogget-05.csv"), err);
        assertTrue(err.contains("G2301 (sheet-left-out) in hogget-09.csv"), err);
    }

    @Test
    void nothing_is_written_unasked() throws IOException {
        String before = hogget();
        shares();
        shares("--patch", folder.resolve("shares.patch").toString());
        assertEquals(before, hogget());
    }

    @Test
    void applied_the_sheet_says_all_else_as_before_and_a_second_run_proposes_nothing() throws IOException {
        String before = hogget();
        assertEquals(ExitStatus.FINE, shares("--apply").status());
        String after = hogget();
        assertFalse(before.equals(after));
        assertEquals(withoutFigures(before), withoutFigures(after));
        assertTrue(shares("--apply").out().contains("No line is to be changed."));
        assertEquals(after, hogget());
    }

    private static String withoutFigures(String text) {
        return FIGURES_AND_SOURCES.matcher(text).replaceAll("");
    }

    /** Where the machine has the tool. */
    @Test
    void the_patch_is_taken_by_the_tools_that_take_patches() throws IOException, InterruptedException {
        shares("--patch", folder.resolve("shares.patch").toString());
        assumeTrue(runs("git", "--version"), "no git here");
        assertTrue(runs("git", "apply", "-p0", "shares.patch"));
        String patched = hogget();
        Files.copy(
                EXAMPLES.resolve("marram").resolve("hogget.cuts"),
                folder.resolve("hogget.cuts"),
                StandardCopyOption.REPLACE_EXISTING);
        shares("--apply");
        assertEquals(hogget(), patched);
    }

    private boolean runs(String... command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor() == 0;
        } catch (IOException notThere) {
            return false;
        }
    }
}
