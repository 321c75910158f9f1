package dev.gambrel.conformance.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Gambrel;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.conformance.documents.Documents.Block;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the first page shows is what the program prints. */
class ReadmeTest {
    private static final List<Block> BLOCKS = Documents.blocks("README.md");

    @TempDir
    private Path folder;

    @Test
    void the_table_is_the_one_that_the_specification_gives() throws IOException {
        String printed =
                print(ExitStatus.FINE, "yield", specification(block("cuts").text()));
        String shown = blocks("text").get(0).text();
        assertTrue(printed.startsWith(shown), printed);
    }

    @Test
    void the_finding_is_the_one_that_a_forgotten_femur_gives() throws IOException {
        String without = block("cuts").text().replaceAll("(?m)^ *bone femur.*\n", "");
        String printed = print(ExitStatus.FINDINGS, "check", specification(without));
        assertEquals(
                blocks("text").get(1).text().strip(),
                printed.substring(0, printed.indexOf("\n\n")).strip());
    }

    private String specification(String text) throws IOException {
        Path file = folder.resolve("leg.cuts");
        Files.writeString(file, text);
        return file.toString();
    }

    private static Block block(String kind) {
        return blocks(kind).get(0);
    }

    private static List<Block> blocks(String kind) {
        return BLOCKS.stream().filter(block -> block.kind().equals(kind)).toList();
    }

    private static String print(ExitStatus expected, String... args) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        assertEquals(expected, Gambrel.run(List.of(args), new Terminal(out, out, false)));
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
