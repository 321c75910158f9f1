package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every limit is inclusive: as much as is allowed passes, and one more does not. The limits are those of the design. */
class EdgesOfLimitsTest {
    @TempDir
    Path folder;

    @Test
    void a_file_of_one_mebibyte_is_taken_and_a_byte_more_is_not() throws IOException {
        String sheet = Sheets.hogget("rest -> mince\n//");
        assertEquals("", codes(filled(sheet, 1 << 20)));
        assertEquals("G0102", codes(filled(sheet, (1 << 20) + 1)));
    }

    private Path filled(String sheet, int bytes) throws IOException {
        String text = sheet + "x".repeat(bytes - sheet.length());
        return Files.writeString(folder.resolve("hogget.cuts"), text);
    }

    @Test
    void a_hundred_cuts_inside_one_another_are_taken_and_one_more_is_not() {
        assertEquals("", codes(Sheets.cutsInCuts(100), Limits.DEFAULT));
        assertEquals("G0112", codes(Sheets.cutsInCuts(101), Limits.DEFAULT));
    }

    @Test
    void a_hundred_braces_are_read_and_one_more_is_not() {
        String braces = "{\n".repeat(100) + "}\n".repeat(100);
        assertFalse(codes("language 1\nrest " + braces, Limits.DEFAULT).contains("G0104"));
        assertTrue(codes("language 1\nrest {" + braces + "}", Limits.DEFAULT).contains("G0104"));
    }

    @Test
    void twenty_thousand_statements_are_taken_and_one_more_is_not() {
        assertEquals("", codes(Sheets.statements(20_000), Limits.DEFAULT));
        assertEquals("G0105", codes(Sheets.statements(20_001), Limits.DEFAULT));
    }

    @Test
    void fifty_files_are_taken_and_one_more_is_not() throws IOException {
        assertEquals("", codes(Sheets.files(folder, 50)));
        assertEquals("G0106", codes(Sheets.files(folder, 51)));
    }

    @Test
    void files_use_files_eight_deep_and_no_deeper() throws IOException {
        assertEquals("", codes(chain(8)));
        assertEquals("G0110", codes(chain(9)));
    }

    private Path chain(int depth) throws IOException {
        for (int i = 2; i <= depth; i++) {
            String use = i < depth ? "use \"part" + (i + 1) + ".cuts\"\n" : "";
            Files.writeString(folder.resolve("part" + i + ".cuts"), "language 1\n" + use);
        }
        return Files.writeString(folder.resolve("hogget.cuts"), Sheets.using("part2.cuts"));
    }

    @Test
    void as_many_parts_as_are_allowed_are_taken_and_one_more_is_not() {
        Limits four = new Limits(1 << 20, 100, 50, 8, 20_000, 4, 50);
        String parts = "cut a 1 %\ncut b 1 %\ncut c 1 %\nrest -> mince\n";
        assertEquals("", codes(Sheets.hogget(parts), four));
        assertEquals("G0111", codes(Sheets.hogget("cut d 1 %\n" + parts), four));
    }

    @Test
    void two_thousand_structures_of_a_species_are_taken_and_one_more_is_not() {
        assertEquals("", codes(Sheets.bones(1_999), Limits.DEFAULT));
        assertEquals("G0150", codes(Sheets.bones(2_000), Limits.DEFAULT));
    }

    @Test
    void an_embedder_sets_how_many_structures_are_taken() {
        Limits three = new Limits(1 << 20, 100, 50, 8, 20_000, new Limits.OfTree(50_000, 3), 50);
        assertEquals("", codes(Sheets.bones(2), three));
        assertEquals("G0150", codes(Sheets.bones(3), three));
    }

    @Test
    void a_name_has_128_characters_and_no_more() {
        assertEquals("", codes(named("n".repeat(128)), Limits.DEFAULT));
        assertEquals("G0214", codes(named("n".repeat(129)), Limits.DEFAULT));
    }

    private static String named(String name) {
        return Sheets.hogget("cut " + name + " 1 %\nrest -> mince\n");
    }

    @Test
    void a_number_has_34_digits_and_no_more() {
        assertEquals(
                "",
                codes(
                        Sheets.hogget("cut leg, two per carcass, 33." + "3".repeat(32) + " %\nrest -> mince\n"),
                        Limits.DEFAULT));
        assertEquals(
                "G0215",
                codes(
                        Sheets.hogget("cut leg, two per carcass, 33." + "3".repeat(33) + " %\nrest -> mince\n"),
                        Limits.DEFAULT));
    }

    private static String codes(Path file) {
        return Corpus.codes(new SpecCompiler().compile(file).diagnostics());
    }

    private static String codes(String text, Limits limits) {
        var result = new SpecCompiler(limits).compile(new SourceText("hogget.cuts", text), Sources.none());
        return Corpus.codes(result.diagnostics());
    }
}
