package dev.gambrel.cli.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormatVerbTest {
    private static final String UGLY = "cut leg 33%{\nrest→mince\n}";
    private static final String LAID_OUT = "cut leg 33 % {\n  rest -> mince\n}\n";
    private static final String MARK = "\uFEFF";

    @TempDir
    Path folder;

    private String write(String name, String text) {
        return Run.write(folder, name, text);
    }

    private static String read(String file) throws IOException {
        return Files.readString(Path.of(file));
    }

    @Test
    void a_specification_is_printed_laid_out_and_its_file_is_left_alone() throws IOException {
        String ugly = write("ugly.cuts", UGLY);
        assertEquals(new Run(ExitStatus.FINE, LAID_OUT, ""), Run.of("format", ugly));
        assertEquals(UGLY, read(ugly));
    }

    @Test
    void what_is_handed_to_the_program_is_printed_laid_out() {
        assertEquals(new Run(ExitStatus.FINE, LAID_OUT, ""), Run.reading(UGLY, "format", "-"));
        assertEquals(new Run(ExitStatus.FINDINGS, "standard input\n", ""), Run.reading(UGLY, "format", "--check", "-"));
        assertEquals(new Run(ExitStatus.FINE, "", ""), Run.reading(LAID_OUT, "format", "--check", "-"));
    }

    @Test
    void a_check_names_the_files_that_are_not_laid_out_and_changes_none() throws IOException {
        String ugly = write("ugly.cuts", UGLY);
        String fine = write("fine.cuts", LAID_OUT);
        assertEquals(new Run(ExitStatus.FINDINGS, ugly + "\n", ""), Run.of("format", "--check", fine, ugly));
        assertEquals(new Run(ExitStatus.FINE, "", ""), Run.of("format", "--check", fine));
        assertEquals(UGLY, read(ugly));
    }

    @Test
    void files_are_written_back_and_those_that_changed_are_named() throws IOException {
        String ugly = write("ugly.cuts", UGLY);
        String fine = write("fine.cuts", LAID_OUT);
        assertEquals(new Run(ExitStatus.FINE, ugly + "\n", ""), Run.of("format", "--write", fine, ugly));
        assertEquals(LAID_OUT, read(ugly));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(2, files.count());
        }
    }

    @Test
    void a_file_that_is_laid_out_already_is_not_touched() throws IOException {
        String fine = write("fine.cuts", LAID_OUT);
        FileTime longAgo = FileTime.fromMillis(0);
        Files.setLastModifiedTime(Path.of(fine), longAgo);
        assertEquals(ExitStatus.FINE, Run.of("format", "--write", fine).status());
        assertEquals(longAgo, Files.getLastModifiedTime(Path.of(fine)));
    }

    @ParameterizedTest
    @ValueSource(strings = {MARK + LAID_OUT, "cut leg 33 % {\r\n  rest -> mince\r\n}\r\n", MARK + UGLY})
    void byte_order_marks_and_line_ends_of_other_systems_are_taken_and_not_kept(String text) throws IOException {
        String file = write("windows.cuts", text);
        assertEquals(LAID_OUT, Run.of("format", file).out());
        assertEquals(LAID_OUT, Run.reading(text, "format", "-").out());
        assertEquals(ExitStatus.FINDINGS, Run.of("format", "--check", file).status());
        Run.of("format", "--write", file);
        assertEquals(LAID_OUT, read(file));
    }

    @Test
    void who_may_read_a_file_stays_as_it_was() throws IOException {
        Path ugly = Path.of(write("ugly.cuts", UGLY));
        Assumptions.assumeTrue(Files.getFileAttributeView(ugly, PosixFileAttributeView.class) != null);
        for (String permissions : new String[] {"rw-------", "rw-rw-rw-", "rwxr-x---"}) {
            Files.writeString(ugly, UGLY);
            Files.setPosixFilePermissions(ugly, PosixFilePermissions.fromString(permissions));
            assertEquals(
                    ExitStatus.FINE,
                    Run.of("format", "--write", ugly.toString()).status());
            assertEquals(permissions, PosixFilePermissions.toString(Files.getPosixFilePermissions(ugly)));
            assertEquals(LAID_OUT, Files.readString(ugly));
        }
    }

    @Test
    void a_link_is_followed_and_stays_a_link() throws IOException {
        Path ugly = Path.of(write("ugly.cuts", UGLY));
        Path link = folder.resolve("link.cuts");
        Assumptions.assumeTrue(canLink(link, ugly));
        assertEquals(
                ExitStatus.FINE, Run.of("format", "--write", link.toString()).status());
        assertTrue(Files.isSymbolicLink(link));
        assertEquals(LAID_OUT, Files.readString(ugly));
    }

    private static boolean canLink(Path link, Path target) throws IOException {
        try {
            Files.createSymbolicLink(link, target.getFileName());
            return true;
        } catch (UnsupportedOperationException | FileSystemException notHere) {
            return false;
        }
    }

    @Test
    void what_cannot_be_compiled_is_laid_out_all_the_same() {
        assertEquals(
                new Run(ExitStatus.FINE, "cutt leg 33 % {\n  rest mince (\n", ""),
                Run.reading("cutt   leg 33%{\nrest mince (", "format", "-"));
    }

    @Test
    void what_would_not_be_read_the_same_is_left_as_it_is() throws IOException {
        String marked = write("marked.cuts", MARK + " " + MARK + "cut leg 33%");
        Run run = Run.of("format", "--write", marked);
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("error G1601 (format-words-changed)"), run.err());
        assertEquals(MARK + " " + MARK + "cut leg 33%", read(marked));
    }

    @Test
    void limits_hold_and_the_other_files_are_seen_to_all_the_same() {
        String deep = write("deep.cuts", "{\n".repeat(101));
        String large = write("large.cuts", "// " + "x".repeat(1 << 20));
        String wide = write("wide.cuts", "cut leg {\n" + "{\n".repeat(90) + "cut a\n".repeat(10_000) + "}".repeat(91));
        String ugly = write("ugly.cuts", UGLY);
        Run run = Run.of(
                "format",
                "--check",
                deep,
                large,
                wide,
                folder.resolve("none.cuts").toString(),
                ugly);
        assertEquals(ExitStatus.COULD_NOT, run.status());
        assertEquals(ugly + "\n", run.out());
        for (String code : new String[] {"G0104", "G0102", "G1602", "G0108"}) {
            assertTrue(run.err().contains(code), run.err());
        }
        assertEquals(
                ExitStatus.COULD_NOT,
                Run.reading("x".repeat((1 << 20) + 1), "format", "-").status());
    }

    @Test
    void what_cannot_be_written_is_told() throws IOException {
        Path locked = Path.of(write("ugly.cuts", UGLY));
        Files.createFile(folder.resolve(".ugly.cuts.part"));
        Run run = Run.of("format", "--write", locked.toString());
        assertEquals(ExitStatus.COULD_NOT, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("The file " + locked + " cannot be written.\n→ Look"), run.err());
        assertEquals(UGLY, Files.readString(locked));
    }

    @Test
    void a_call_that_could_be_meant_in_two_ways_is_wrong_usage() {
        String ugly = write("ugly.cuts", UGLY);
        assertEquals(ExitStatus.WRONG_USAGE, Run.of("format").status());
        assertEquals(ExitStatus.WRONG_USAGE, Run.of("format", ugly, ugly).status());
        assertEquals(
                ExitStatus.WRONG_USAGE,
                Run.of("format", "--check", "--write", ugly).status());
        assertEquals(
                ExitStatus.WRONG_USAGE, Run.of("format", "--write", ugly, "-").status());
    }

    @Test
    void what_is_not_called_like_a_specification_is_never_written() throws IOException {
        String page = write("README.md", "a page\n    with code\n");
        Run run = Run.of("format", "--write", page);
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("is not called like a specification; its name ends in .cuts."), run.err());
        assertEquals("a page\n    with code\n", read(page));
    }
}
