package dev.gambrel.compiler.format;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.parse.SpecParser;
import dev.gambrel.compiler.parse.Word;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The guard that stands between a fault of the layout and somebody's file. */
class SameWordsTest {
    private static final String TEXT =
            "cut leg, // both\n  33 % +/- 1 % {\n\n rest → mince // \"all\"\n}\nnote \"a  b\"\n";

    private static List<Word> words(String text) {
        return new SpecParser(Limits.DEFAULT)
                .words(new SourceText("hogget.cuts", text))
                .orElseThrow();
    }

    private static List<String> firstChange(String other) {
        SourceText text = new SourceText("hogget.cuts", TEXT);
        return SameWords.firstChange(words(TEXT), words(other)).stream()
                .map(text::slice)
                .toList();
    }

    @Test
    void blanks_empty_lines_line_ends_and_two_spellings_make_no_difference() {
        assertEquals(
                List.of(),
                firstChange(
                        "\r\n\r\ncut leg,// both  \n33% ± 1%{\r\n\r\n\r\nrest -> mince// \"all\"\r}\n\nnote \"a  b\""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "leg     | loin      | leg",
                "leg     | Leg       | leg",
                "33      | 33.0      | 33",
                "33      | 3 3       | 33",
                "// both | // bith   | // both",
                "// both | ``        | // both",
                "\"a  b\"  | \"a b\"     | \"a  b\"",
                "+/-     | to        | +/-",
                "→       | ,         | →",
                "rest    | ``        | rest",
                "rest    | rest more | →",
                "mince   | mi nce    | mince",
                "note    | cut       | note"
            })
    void any_other_change_is_found_where_it_is(String from, String to, String place) {
        assertEquals(List.of(place), firstChange(TEXT.replace(from, to)));
    }

    @Test
    void a_line_broken_or_joined_is_a_change() {
        assertEquals(List.of("%"), firstChange(TEXT.replace("33 %", "33\n%")));
        assertEquals(List.of("\n"), firstChange(TEXT.replace("{\n\n", "{")));
    }

    @Test
    void words_put_in_or_lost_at_the_end_are_a_change() {
        assertEquals(List.of(""), firstChange(TEXT + "rest"));
        assertEquals(List.of("\n"), firstChange(TEXT.replace("\nnote \"a  b\"\n", "\n")));
    }
}
