package dev.gambrel.compiler.format;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpecFormatterTest {
    private static Result<String> result(String text) {
        return new SpecFormatter().format(new SourceText("hogget.cuts", text));
    }

    private static String formatted(String text) {
        return result(text).orElseThrow();
    }

    private static void becomes(String expected, String text) {
        assertEquals(expected, formatted(text));
        assertEquals(expected, formatted(expected), "laid out a second time");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cut  leg\t33%+/-0.9%,boneless | cut leg 33 % ± 0.9 %, boneless",
                "rest→mince                    | rest -> mince",
                "cut leg 33 % ,  boneless      | cut leg 33 %, boneless",
                "cut haunch 33 %, also gigot( France , Scotland ) | cut haunch 33 %, also gigot (France, Scotland)",
                "trim fat to at most 1 / 2 in at any point | trim fat to at most 1/2 in at any point",
                "trim fat to at most 1   1/4 in on average | trim fat to at most 1 1/4 in on average",
                "cut leg 33 %{                 | cut leg 33 % {",
                "note   \"knife  and  saw\"    | note \"knife  and  saw\"",
            })
    void one_space_stands_between_words_and_round_signs(String text, String expected) {
        becomes(expected + "\n", text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "CUT Leg 33 %",
                "reference IMPS 233A",
                "cut leg 20kg",
                "cut 6-8 rib 5 %",
                "cut leg -3 %",
                "carcass cold, 20–24 kg",
                "cut \"7-rib  rack\" 9 %",
                "note \"an open quotation  ",
                "cut leg = 33 %",
                "cut leg / shank",
                "/ / no comment"
            })
    void words_and_signs_of_no_known_use_are_left_as_they_are_written(String text) {
        becomes(text + "\n", text);
    }

    @Test
    void a_block_is_indented_by_two_and_its_brace_stands_with_its_line() {
        becomes("""
                cut leg 33 % {
                  cut shank 13 % {
                    note "one piece"
                  }
                }
                """, "cut leg 33 % {\ncut shank 13 % {\n        note \"one piece\"\n   }\n }");
    }

    @Test
    void braces_that_do_not_match_are_laid_out_as_far_as_they_go() {
        becomes("}\n}\ncut leg 33 % {\n  {\n    rest -> mince\n", "}\n  }\ncut leg 33 % {\n{\nrest -> mince");
    }

    @Test
    void what_a_person_wrote_on_one_line_stays_on_one() {
        becomes("cut leg 33 % { rest -> mince }\n", "cut leg 33 %{rest->mince}");
        becomes("cut leg 33 %\n{\n  rest -> mince\n}\n", "cut leg 33 %\n{\nrest -> mince\n}");
    }

    @Test
    void a_line_that_goes_on_after_its_comma_is_indented_by_four() {
        becomes(
                """
                cut leg, two per carcass,  // both
                    // of the weight of the carcass
                    33 %,

                    boneless {
                  rest -> mince
                }
                """,
                "cut leg, two per carcass, // both\n// of the weight of the carcass\n33 %,\n\nboneless {\nrest -> mince\n}");
    }

    @Test
    void a_comment_stays_where_it_is() {
        becomes(
                """
                // first
                cut leg 33 % {  // the leg
                  // within
                  rest -> mince  //as written
                  // last
                }  // end
                """,
                "  // first  \ncut leg 33 % {// the leg\n// within\nrest -> mince\t//as written\n// last\n} // end");
    }

    @Test
    void one_empty_line_is_kept_and_none_at_the_ends() {
        becomes("cut leg 33 %\n\ncut loin 12 %\n", "\n\n \ncut leg 33 %\n\t\n\n\ncut loin 12 %\n\n\n");
        becomes("cut leg 33 % {\n\n  rest -> mince\n\n}\n", "cut leg 33 % {\n\n\nrest -> mince\n\n\n}");
        becomes("", "");
        becomes("", " \n\t\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void lines_end_in_one_way(String end) {
        becomes("note \"a\"\nnote \"b\"\n", "note \"a\"" + end + "note \"b\"" + end);
    }

    /** However wide the gaps were before. */
    private static void isLaidOut(String expected) {
        becomes(expected, expected.replaceAll(" +", " "));
        becomes(expected, expected.replaceAll(" +", "     "));
    }

    @Test
    void shares_and_arrows_of_neighbours_stand_in_columns() {
        isLaidOut("""
                bone femur     7.4 % ± 0.4 %       -> bones
                cut topside   20 %, boneless {
                  remove silverskin   1.5 %         -> bin
                  trim fat           10 % ± 1 %     -> mince
                  square off           .5 % ± .1 %  -> diced
                }
                loss drip      0.5 % ± 0.05 %
                bone tibia   1/2 % to 1 1/2 %      -> bones
                bone tarsus   31 to 34.8 % of leg  -> bones
                rest                               -> mince
                """);
    }

    @Test
    void an_empty_line_begins_new_columns_and_a_comment_does_not() {
        isLaidOut("""
                cut leg       33 %
                //long
                cut shoulder  21 %

                cut loin  11 %
                cut neck   4 %
                """);
    }

    @Test
    void what_is_alone_in_its_column_follows_after_one_space() {
        isLaidOut("cut leg 33 %\nrest -> mince\n");
    }

    @Test
    void a_share_or_an_arrow_after_a_comma_stands_in_no_column() {
        isLaidOut("""
                cut leg, two per carcass, 33 %
                cut shoulder, two per carcass, 21 % -> diced
                stream mince, saleable, lean 85 %
                portion steak 180 g, remainder -> diced
                published 32 % of carcass
                published 7.5 % of carcass
                """);
    }

    @Test
    void a_line_with_a_long_beginning_does_not_push_the_figures_of_its_neighbours() {
        isLaidOut("""
                trim fat to at most 5 mm on average and at most 8 mm at any point 6 % ± 1 % -> render
                remove tail  2.0 %  -> mince
                remove cap   4.0 %  -> mince
                """);
    }

    @Test
    void a_character_that_would_be_read_as_a_byte_order_mark_is_not_moved_to_the_front() {
        Result<String> result = result("\n \uFEFFlanguage 1\n");
        assertEquals(List.of(FormatCode.WORDS_CHANGED), codes(result));
    }

    private static List<?> codes(Result<String> result) {
        return result.diagnostics().stream().map(Diagnostic::code).toList();
    }

    @Test
    void a_text_that_would_grow_beyond_the_limit_is_refused() {
        Limits small = new Limits(30, 100, 50, 8, 20_000, 50_000, 50);
        Result<String> result =
                new SpecFormatter(small).format(new SourceText("hogget.cuts", "cut a 1%,b,c,d,e,f,g,h,i,j,k"));
        assertEquals(List.of(FormatCode.TOO_LARGE), codes(result));
    }
}
