package dev.gambrel.diagnostic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import org.junit.jupiter.api.Test;

class UnderlineTest {
    private static Underline under(String line, String word) {
        int start = line.indexOf(word);
        return Underline.of(new SourceText("hogget.cuts", line), 1, new Span(start, start + word.length()), '^');
    }

    private static void marks(String line, int indent, int marks, Underline found) {
        assertEquals(line, found.line());
        assertEquals(" ".repeat(indent), found.indent());
        assertEquals("^".repeat(marks), found.marks());
    }

    @Test
    void the_words_are_marked() {
        marks("cut leg 33 %", 4, 3, under("cut leg 33 %", "leg"));
    }

    @Test
    void a_bare_place_gets_one_mark() {
        SourceText text = new SourceText("hogget.cuts", "cut leg");
        marks("cut leg", 7, 1, Underline.of(text, 1, new Span(7, 7), '^'));
    }

    @Test
    void a_span_of_several_lines_is_marked_to_the_end_of_its_first() {
        SourceText text = new SourceText("hogget.cuts", "cut leg {\n  cut chump\n}");
        marks("cut leg {", 4, 5, Underline.of(text, 1, new Span(4, 23), '^'));
    }

    @Test
    void a_line_end_is_marked_just_after_the_line() {
        SourceText text = new SourceText("hogget.cuts", "cut leg\r\nrest");
        marks("cut leg", 7, 1, Underline.of(text, 1, new Span(8, 9), '^'));
    }

    @Test
    void a_tab_is_four_blanks() {
        marks("    cut    leg", 11, 3, under("\tcut\tleg", "leg"));
        marks("a    b", 1, 4, under("a\tb", "\t"));
    }

    /** Unicode Standard Annex 11: ideographs, full-width letters and emoji are wide. */
    @Test
    void wide_characters_and_emoji_take_two_columns() {
        marks("\u7F8A\u8098 leg", 5, 3, under("\u7F8A\u8098 leg", "leg"));
        marks("cut \u7F8A\u8098", 4, 4, under("cut \u7F8A\u8098", "\u7F8A\u8098"));
        marks("\uFF4Ceg leg", 5, 3, under("\uFF4Ceg leg", "leg"));
        marks("\uD83E\uDD69 leg", 3, 3, under("\uD83E\uDD69 leg", "leg"));
        marks("\uD55C leg", 3, 3, under("\uD55C leg", "leg"));
    }

    @Test
    void combining_marks_take_no_column() {
        marks("entreco\u0302te leg", 10, 3, under("entreco\u0302te leg", "leg"));
        marks("entreco\u0302te", 0, 9, under("entreco\u0302te", "entreco\u0302te"));
    }

    @Test
    void hidden_characters_are_shown_and_counted_as_shown() {
        marks("a\\u{202E} leg", 10, 3, under("a\u202E leg", "leg"));
        marks("\\u{7}", 0, 5, under("\u0007", "\u0007"));
    }

    @Test
    void a_line_of_160_characters_is_shown_whole() {
        String line = "x".repeat(157) + "leg";
        marks(line, 157, 3, under(line, "leg"));
    }

    @Test
    void a_longer_line_is_cut_around_the_place() {
        String line = "x".repeat(300) + "leg" + "y".repeat(300);
        Underline found = under(line, "leg");
        marks("…" + "x".repeat(80) + "leg" + "y".repeat(77) + "…", 81, 3, found);
    }

    @Test
    void a_place_near_an_end_of_a_long_line_shows_that_end() {
        Underline first = under("leg" + "y".repeat(300), "leg");
        marks("leg" + "y".repeat(157) + "…", 0, 3, first);
        Underline last = under("x".repeat(300) + "leg", "leg");
        marks("…" + "x".repeat(157) + "leg", 158, 3, last);
    }

    @Test
    void marks_end_where_a_long_line_is_cut() {
        Underline found = under("x".repeat(1000), "x".repeat(900));
        assertEquals(160, found.marks().length());
        assertTrue(found.line().endsWith("…"));
    }

    @Test
    void a_long_line_is_not_cut_through_an_emoji() {
        String meat = "\uD83E\uDD69";
        for (String before : new String[] {"", "x"}) {
            Underline found = under(before + meat.repeat(200) + "leg" + before + meat.repeat(200), "leg");
            assertFalse(found.line().contains("\\u{"), found.line());
        }
    }
}
