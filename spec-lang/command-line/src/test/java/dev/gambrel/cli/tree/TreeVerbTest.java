package dev.gambrel.cli.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Json;
import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TreeVerbTest {
    @TempDir
    Path folder;

    private String hogget;

    @BeforeEach
    void write_the_sheet() {
        hogget = Run.write(folder, "hogget.cuts", Run.HOGGET);
    }

    @Test
    void a_tree_is_printed_as_json_and_nothing_else() {
        Run run = Run.of("tree", hogget);
        assertEquals(ExitStatus.FINE, run.status());
        assertEquals("", run.err());
        assertFalse(((Map<?, ?>) Json.parse(run.out())).isEmpty());
    }

    @Test
    void a_tree_is_never_written_over_its_specification() throws IOException {
        String before = Files.readString(Path.of(hogget));
        assertEquals(
                ExitStatus.WRONG_USAGE, Run.of("tree", hogget, "--out", hogget).status());
        assertEquals(before, Files.readString(Path.of(hogget)));
    }

    @Test
    void no_folder_is_made_for_a_tree() {
        Path nowhere = folder.resolve("not there/hogget.json");
        assertEquals(
                ExitStatus.COULD_NOT,
                Run.of("tree", hogget, "--out", nowhere.toString()).status());
        assertTrue(Files.notExists(nowhere.getParent()));
    }

    @Test
    void a_tree_is_written_whole_and_it_is_said_where() throws IOException {
        Path target = Files.createDirectory(folder.resolve("trees")).resolve("hogget.json");
        Run run = Run.of("tree", hogget, "--out", target.toString());
        assertEquals(new Run(ExitStatus.FINE, "The tree was written as JSON to " + target + ".\n", ""), run);
        assertEquals(Run.of("tree", hogget).out(), Files.readString(target));
        try (Stream<Path> files = Files.list(target.getParent())) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void a_tree_that_was_there_is_replaced() throws IOException {
        Path target = folder.resolve("hogget.json");
        Files.writeString(target, "old".repeat(10_000));
        assertEquals(
                ExitStatus.FINE,
                Run.of("tree", hogget, "--out", target.toString()).status());
        assertEquals(Run.of("tree", hogget).out(), Files.readString(target));
    }

    @Test
    void where_nothing_can_be_written_that_is_said() throws IOException {
        Path full = Files.createDirectories(folder.resolve("full/inner"));
        Run onFolder = Run.of("tree", hogget, "--out", full.getParent().toString());
        assertEquals(ExitStatus.COULD_NOT, onFolder.status());
        assertEquals("", onFolder.out());
        assertTrue(onFolder.err().startsWith("The file " + full.getParent() + " cannot be written.\n→ Look"));
        Path underFile = folder.resolve("hogget.cuts/tree.json");
        assertEquals(
                ExitStatus.COULD_NOT,
                Run.of("tree", hogget, "--out", underFile.toString()).status());
    }

    @Test
    void a_name_that_can_be_no_file_is_wrong_usage() {
        assertEquals(
                ExitStatus.WRONG_USAGE, Run.of("tree", hogget, "--out", "a\0b").status());
    }

    @Test
    void a_name_of_a_file_cannot_steer_the_terminal() {
        Run run = Run.of(
                "tree", hogget, "--out", folder.resolve("hogget.cuts/\u001B[2J").toString());
        assertFalse(run.err().contains("\u001B"), "escape in what was printed");
        Run written =
                Run.of("tree", hogget, "--out", folder.resolve("\u202Egel").toString());
        assertFalse(written.out().contains("\u202E"), "direction character in what was printed");
    }

    @Test
    void of_a_sheet_with_errors_no_tree_is_written() {
        String open = Run.write(folder, "open.cuts", Run.HOGGET.replace("rest -> mince", "cut loin 12 %"));
        Path target = folder.resolve("open.json");
        Run run = Run.of("tree", open, "--out", target.toString());
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertFalse(Files.exists(target));
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("error G0501"));
    }

    @Test
    void a_tree_that_is_read_back_is_written_the_same() {
        String json = Run.write(folder, "tree.json", Run.of("tree", hogget).out());
        assertEquals(Run.of("tree", hogget), Run.of("tree", json));
    }
}
