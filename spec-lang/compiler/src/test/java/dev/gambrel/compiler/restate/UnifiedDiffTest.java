package dev.gambrel.compiler.restate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.text.SourceText;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The form of POSIX.1-2017, diff -u. */
class UnifiedDiffTest {
    private static String diff(String before, String... wordsForWords) {
        List<TextEdit> edits = new ArrayList<>();
        for (int i = 0; i < wordsForWords.length; i += 2) {
            int at = before.indexOf(wordsForWords[i]);
            edits.add(new TextEdit(at, at + wordsForWords[i].length(), wordsForWords[i + 1]));
        }
        return RestatedText.of(new SourceText("leg.cuts", before), edits).diff();
    }

    @Test
    void a_changed_line_has_three_lines_about_it() {
        assertEquals("""
                --- leg.cuts
                +++ leg.cuts
                @@ -2,7 +2,7 @@
                 b
                 c
                 d
                -e
                +E
                 f
                 g
                 h
                """, diff("a\nb\nc\nd\ne\nf\ng\nh\ni\n", "e", "E"));
    }

    @Test
    void changes_far_apart_make_two_pieces_and_an_inserted_line_moves_the_second() {
        assertEquals("""
                --- leg.cuts
                +++ leg.cuts
                @@ -1,4 +1,5 @@
                 a
                +new
                 b
                 c
                 d
                @@ -7,4 +8,4 @@
                 g
                 h
                 i
                -j
                +J
                """, diff("a\nb\nc\nd\ne\nf\ng\nh\ni\nj\n", "a", "a\nnew", "j", "J"));
    }

    @Test
    void a_last_line_without_an_end_is_said_to_have_none() {
        assertEquals("""
                --- leg.cuts
                +++ leg.cuts
                @@ -1,2 +1,2 @@
                 a
                -b
                \\ No newline at end of file
                +B
                \\ No newline at end of file
                """, diff("a\nb", "b", "B"));
    }

    @Test
    void a_carriage_return_belongs_to_its_line() {
        assertEquals("--- leg.cuts\n+++ leg.cuts\n@@ -1,1 +1,1 @@\n-a\r\n+A\r\n", diff("a\r\n", "a", "A"));
    }

    @Test
    void a_name_with_a_blank_ends_in_a_tab() {
        RestatedText text = RestatedText.of(new SourceText("my leg.cuts", "a\n"), List.of(new TextEdit(0, 1, "b")));
        assertEquals("--- my leg.cuts\t", text.diff().lines().findFirst().orElseThrow());
    }

    /** As git quotes it: a name may not begin a header of its own. */
    @Test
    void a_name_of_several_lines_stands_in_quotation_marks() {
        RestatedText text =
                RestatedText.of(new SourceText("s\n+++ \"other\".cuts", "a\n"), List.of(new TextEdit(0, 1, "b")));
        assertEquals(
                "--- \"s\\012+++ \\\"other\\\".cuts\"",
                text.diff().lines().findFirst().orElseThrow());
    }
}
