package dev.gambrel.diagnostic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlainReportTest {
    private static final SourceText TEXT =
            new SourceText("hogget.cuts", "language 1\ncut leg 33 % {\n  cut chump 15 % ± 0.8 %\n}\n");
    private static final TreePath CHUMP =
            TreePath.ROOT.then(TradeName.of("leg")).then(TradeName.of("chump"));
    private static final Place.InText AT_LEG = at("leg");
    private static final Place.InText AT_CHUMP = at("chump");
    private static final PlainReport PLAIN = new PlainReport(PlainReport.Paint.NONE);

    private static Place.InText at(String word) {
        int start = TEXT.text().indexOf(word);
        return new Place.InText(TEXT, new Span(start, start + word.length()));
    }

    private static Diagnostic sum(Place place) {
        return Diagnostic.of(TestCode.SUM_NOT_100, place).with("cut", "leg").with("sum", "15 %");
    }

    @Test
    void a_finding_says_where_what_and_what_to_do() {
        Diagnostic finding = sum(AT_LEG)
                .related(AT_CHUMP, "the only part")
                .note("part   share\nchump  15")
                .help("Add the part that is missing.");
        assertEquals("""
                error T0000 (sum-not-100) in hogget.cuts, line 2
                  The parts of the leg add up to 15 %.
                    2 | cut leg 33 % {
                      |     ^^^
                  the only part in hogget.cuts, line 3:
                    3 |   cut chump 15 % ± 0.8 %
                      |       -----
                  part   share
                  chump  15
                  → Add the part that is missing.
                """, PLAIN.print(finding));
    }

    @Test
    void a_finding_of_a_tree_without_text_gives_the_path() {
        assertEquals(
                "note T0002 (by-hand) at leg / chump\n  Cut by hand.\n",
                PLAIN.print(Diagnostic.of(TestCode.BY_HAND, new Place.InTree(CHUMP, Aspect.NAME))));
    }

    @Test
    void a_finding_of_a_whole_file_gives_its_name() {
        assertEquals(
                "note T0002 (by-hand) in deer.cuts\n  Cut by hand.\n",
                PLAIN.print(Diagnostic.of(TestCode.BY_HAND, new Place.InFile("deer.cuts"))));
    }

    @Test
    void a_finding_of_a_tree_that_is_written_down_gives_both() {
        Place both = new Place.Written(new Place.InTree(CHUMP, Aspect.NAME), AT_CHUMP);
        String printed = PLAIN.print(Diagnostic.of(TestCode.LONE_SPREAD, both).with("part", "chump"));
        assertTrue(printed.startsWith("warning T0001 (lone-spread) in hogget.cuts, line 3, leg / chump\n"));
        assertTrue(printed.contains("    3 |   cut chump 15 % ± 0.8 %\n      |       ^^^^^\n"));
    }

    @Test
    void the_margin_is_as_wide_as_the_number_of_the_line() {
        SourceText text = new SourceText("hogget.cuts", "\n".repeat(9999) + "cut leg");
        String printed = PLAIN.print(Diagnostic.of(TestCode.BY_HAND, new Place.InText(text, new Span(10003, 10006))));
        assertTrue(printed.endsWith("    10000 | cut leg\n          |     ^^^\n"), printed);
    }

    @Test
    void nothing_found_prints_nothing() {
        assertEquals("", PLAIN.print(List.of(), 50));
    }

    @Test
    void findings_beyond_the_limit_are_counted() {
        Diagnostic finding = Diagnostic.of(TestCode.BY_HAND, new Place.InFile("deer.cuts"));
        String one = "note T0002 (by-hand) in deer.cuts\n  Cut by hand.\n\n";
        assertEquals(one.repeat(50), PLAIN.print(Collections.nCopies(50, finding), 50));
        assertEquals(one.repeat(50) + "and 1 more finding.\n\n", PLAIN.print(Collections.nCopies(51, finding), 50));
        assertEquals(one.repeat(50) + "and 10 more findings.\n\n", PLAIN.print(Collections.nCopies(60, finding), 50));
    }

    @Test
    void a_text_cannot_steer_the_terminal() {
        SourceText hostile = new SourceText("le\u001B[2Jg.cuts", "cut \u001B[31mleg\u202E");
        Diagnostic finding = Diagnostic.of(TestCode.SUM_NOT_100, new Place.InText(hostile, new Span(4, 12)))
                .with("cut", "\u001B]0;leg")
                .with("sum", "\u0007")
                .related(new Place.InFile("\u202Egel"), "\u0000here")
                .note("a\u001Bb\nc\rd")
                .help("\u2066");
        String printed = PLAIN.print(finding);
        assertTrue(printed.chars().allMatch(c -> c == '\n' || c >= ' ' && c != 0x7F), printed);
        assertFalse(printed.contains("\u202E") || printed.contains("\u2066"));
        assertTrue(printed.contains("cut \\u{1B}[31mleg\\u{202E}"));
    }

    @Test
    void colours_are_used_only_where_they_were_asked_for() {
        Diagnostic finding = sum(AT_LEG).related(AT_CHUMP, "the only part");
        assertFalse(PLAIN.print(finding).contains("\u001B"));
        String painted = new PlainReport(PlainReport.Paint.ANSI).print(finding);
        assertTrue(painted.startsWith("\u001B[1;31merror T0000\u001B[0m (sum-not-100)"));
        assertTrue(painted.contains("\u001B[1;31m^^^\u001B[0m"));
        assertTrue(painted.contains("\u001B[1;36m-----\u001B[0m"));
        assertEquals(PLAIN.print(finding), painted.replaceAll("\u001B\\[[0-9;]*m", ""));
    }

    @Test
    void a_warning_has_a_colour_of_its_own() {
        Diagnostic finding = Diagnostic.of(TestCode.LONE_SPREAD, AT_LEG).with("part", "chump");
        assertTrue(new PlainReport(PlainReport.Paint.ANSI).print(finding).startsWith("\u001B[1;33mwarning"));
    }
}
