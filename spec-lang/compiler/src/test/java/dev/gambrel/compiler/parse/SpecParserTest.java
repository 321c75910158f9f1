package dev.gambrel.compiler.parse;

import static dev.gambrel.compiler.parse.Parsed.clause;
import static dev.gambrel.compiler.parse.Parsed.line;
import static dev.gambrel.compiler.parse.Parsed.lines;
import static dev.gambrel.compiler.parse.Parsed.name;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpecParserTest {
    @ParameterizedTest
    @ValueSource(strings = {"cut leg 33 %", "Cut leg 33 %", "CUT leg 33 %", "  cut leg 33 %", "\tcut\u00A0leg\t33%"})
    void keywords_may_be_written_in_any_case_and_blanks_of_any_width(String text) {
        Declaration leg = line(text);
        assertEquals(Keyword.CUT_LINE, leg.keyword());
        assertEquals("leg", leg.names().get(0).text().text());
        assertInstanceOf(Clause.Figures.class, leg.clauses().get(0));
    }

    @ParameterizedTest
    @EnumSource(Keyword.class)
    void every_keyword_is_known_in_capitals(Keyword keyword) {
        assertEquals(
                keyword,
                Keyword.of(keyword.word().toUpperCase(java.util.Locale.ROOT)).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cut of the leg", "loss leader", "rest of the shoulder", "square cut", "best end of neck", "in and out",
                "bone in loin", "two rib", "part boned shoulder", "point end", "lean fat trim", "first and last",
                "H-bone", "6-8 rib", "chef's cut", "thick flank"
            })
    void names_may_hold_words_of_the_language(String name) {
        if (Character.isDigit(name.charAt(0))) {
            assertEquals(name, name("cut \"" + name + "\" 5 %"));
        } else {
            assertEquals(name, name("cut " + name + " 5 %"));
            assertEquals(name, name("cut \"" + name + "\" 5 %"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"羊もも", "entrecôte", "ποδάρι", "баранина", "naïve cut"})
    void names_may_be_of_any_script(String name) {
        assertEquals(name, name("cut " + name + " 5 %"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"   ", "\t", "\u00A0", " \t "})
    void the_width_of_a_gap_between_words_makes_no_difference(String gap) {
        assertEquals("thick flank", name("cut thick" + gap + "flank 5 %"));
        assertEquals("thick flank", name("cut thick" + gap.repeat(200) + "flank 5 %"));
        assertEquals("in skin", ((Clause.Basis) clause("carcass in" + gap + "skin")).words());
        assertEquals(
                "head off",
                ((Clause.Words) line("carcass cold, head" + gap + "off")
                                .clauses()
                                .get(1))
                        .words());
    }

    @Test
    void quotation_marks_and_backslashes_in_a_quotation_are_escaped() {
        assertEquals("the \"eye\" \\ muscle", name("cut \"the \\\"eye\\\" \\\\ muscle\" 5 %"));
        assertEquals("leg // loin".replace("//", "--"), name("cut \"leg -- loin\" 5 %"));
        assertEquals(new Clause.Text("a // b # {", new dev.gambrel.text.Span(5, 17)), clause("note \"a // b # {\""));
    }

    @Test
    void a_quotation_that_is_not_closed_costs_its_line_and_no_more() {
        Parsed parsed = Parsed.of("note \"knife and saw\nnote \"b\"\nnote \"c\\\n");
        assertEquals(List.of(SyntaxCode.OPEN_QUOTE, SyntaxCode.OPEN_QUOTE), codes(parsed));
        assertEquals(3, parsed.declarations().size());
    }

    private static List<?> codes(Parsed parsed) {
        return parsed.findings().stream().map(finding -> finding.code()).toList();
    }

    @Test
    void places_after_an_emoji_are_counted_as_java_and_editors_count() {
        Parsed parsed = Parsed.of("// \uD83E\uDD69\uD83D\uDC11\ncut \uD83D\uDC11leg 33 %\ncut loin\n");
        assertEquals(List.of(), parsed.messages());
        assertEquals("cut", parsed.slice(parsed.declarations().get(1).keywordSpan()));
        assertEquals("loin", parsed.slice(parsed.declarations().get(1).head()));
        assertEquals(
                "\uD83D\uDC11leg", parsed.slice(parsed.declarations().get(0).head()));
    }

    @Test
    void a_finding_after_an_emoji_underlines_the_right_words() {
        Parsed parsed = Parsed.of("note \"\uD83E\uDD69\"\ncutt leg 33 %\n");
        assertEquals(List.of("cutt"), parsed.underlined());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void lines_end_as_every_system_ends_them(String end) {
        List<Declaration> lines = lines("cut leg 33 % {" + end + "cut chump 10 %" + end + "}" + end + "cut loin 12 %");
        assertEquals(2, lines.size());
        assertEquals(1, lines.get(0).body().size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cut leg 33 % { cut chump 10 % }",
                "cut leg 33 % {cut chump 10 %}\n",
                "cut leg 33 % { cut chump 10 % // a\n}",
                "cut leg 33 % {\ncut chump 10 % }",
                "\n\ncut leg 33 % {\n\ncut chump 10 %\n\n}\n\n"
            })
    void a_brace_may_close_on_the_line_of_what_it_holds(String text) {
        Declaration leg = line(text);
        assertEquals(1, leg.body().size());
        assertEquals(
                "chump", ((Declaration) leg.body().get(0)).names().get(0).text().text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"cut leg 33 % { \\", "cut leg 33 % { \\\n", "cut leg 33 % { // open \\ #\n \\\n"})
    void an_open_brace_is_told_of_whatever_else_stands_on_the_last_line(String text) {
        assertTrue(codes(Parsed.of(text)).contains(SyntaxCode.OPEN_BRACE), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void a_stray_character_is_told_of_once_a_line(String end) {
        Parsed parsed = Parsed.of("cut leg # # 33 %" + end + "cut loin # 12 %" + end + "cut 5 5" + end);
        assertEquals(
                List.of(SyntaxCode.STRAY_CHARACTER, SyntaxCode.STRAY_CHARACTER, SyntaxCode.DOES_NOT_FIT),
                codes(parsed));
    }

    @Test
    void a_comment_at_the_end_is_in_the_last_line_with_or_without_a_line_end() {
        String line = "rest -> mince // specification";
        Parsed parsed = Parsed.of(line);
        assertEquals(line, parsed.slice(parsed.declarations().get(0).span()));
    }

    @Test
    void empty_braces_hold_nothing() {
        assertEquals(List.of(), line("cut leg 33 % { }").body());
        assertEquals(List.of(), line("cut leg 33 % {}").body());
        assertEquals(List.of(), lines(""));
        assertEquals(List.of(), lines("// only a comment"));
    }

    @Test
    void a_line_that_ends_in_a_comma_goes_on() {
        Declaration leg = line("cut leg 33 %,\n  two per carcass,\n\n  boneless");
        assertEquals(3, leg.clauses().size());
    }

    @Test
    void what_a_line_covers_is_known_to_the_letter() {
        Parsed parsed = Parsed.of("  cut thick  flank 33 % ± 0.9 %, boneless // as spoken\n");
        Declaration line = parsed.declarations().get(0);
        assertEquals("cut", parsed.slice(line.keywordSpan()));
        assertEquals("thick  flank", parsed.slice(line.head()));
        assertEquals("thick flank", line.names().get(0).text().text());
        assertEquals("33 % ± 0.9 %", parsed.slice(line.clauses().get(0).span()));
        assertEquals("boneless", parsed.slice(line.clauses().get(1).span()));
        assertTrue(parsed.slice(line.span()).startsWith("cut thick  flank 33 % ± 0.9 %, boneless"));
    }

    private static Figure figure(String written) {
        return ((Clause.Figures) clause("cut leg " + written)).figure();
    }

    private static BigDecimal number(String written) {
        return figure(written).amount().terms().get(0).number();
    }

    @ParameterizedTest
    @CsvSource({
        "33.0 %, 33.0",
        "33%, 33",
        ".5 %, 0.5",
        "-3 %, -3",
        "−3 %, -3",
        "1/2 in, 0.5",
        "1 1/2 in, 1.5",
        "3/16 in, 0.1875",
        "007 %, 7"
    })
    void numbers_are_read_exactly(String written, String number) {
        assertEquals(new BigDecimal(number), number(written));
    }

    @Test
    void a_figure_keeps_its_spread_its_range_and_what_it_is_of() {
        assertInstanceOf(Figure.More.Nothing.class, figure("33 %").more());
        assertInstanceOf(Figure.More.PlusMinus.class, figure("33 % ± 0.9 %").more());
        assertInstanceOf(Figure.More.PlusMinus.class, figure("33 % +/- 0.9 %").more());
        assertInstanceOf(Figure.More.UpTo.class, figure("31.2 to 34.8 %").more());
        assertEquals(
                "thick flank", figure("33 % of thick flank").of().get(0).text().text());
    }

    @Test
    void pounds_and_ounces_stand_side_by_side() {
        List<Amount.Term> terms = figure("47 lb 6 oz").amount().terms();
        assertEquals(List.of("lb", "oz"), terms.stream().map(Amount.Term::unit).toList());
        assertEquals(
                List.of(new BigDecimal("47"), new BigDecimal("6")),
                terms.stream().map(Amount.Term::number).toList());
    }

    @ParameterizedTest
    @CsvSource({
        "'22,4 %', COMMA_IN_NUMBER",
        "'1,000 %', COMMA_IN_NUMBER",
        "1/3 in, INEXACT_FRACTION",
        "1/0 in, INEXACT_FRACTION",
        "11111111111111111111111111111111111 %, NUMBER_TOO_LONG",
        "0.00000000000000000000000000000000001 %, ''"
    })
    void a_number_that_cannot_be_held_is_told(String written, String code) {
        Parsed parsed = Parsed.of("cut leg " + written);
        assertEquals(code.isEmpty() ? List.of() : List.of(SyntaxCode.valueOf(code)), codes(parsed));
        assertEquals(!code.isEmpty(), parsed.declarations().get(0).damaged());
    }

    @Test
    void thirty_four_digits_are_read_and_a_million_are_refused() {
        assertEquals(new BigDecimal("1".repeat(34)), number("1".repeat(34) + " %"));
        Parsed parsed = Parsed.of("cut leg " + "1".repeat(1_000_000) + " %");
        assertEquals(List.of(SyntaxCode.NUMBER_TOO_LONG), codes(parsed));
        assertTrue(parsed.messages().get(0).length() < 120);
    }

    @Test
    void a_line_that_cannot_be_read_costs_itself_and_no_more() {
        Parsed parsed = Parsed.of("cut leg 33 %\ncut 5 5 5\ncut loin 12 %\n");
        assertEquals(1, parsed.findings().size());
        assertEquals(3, parsed.declarations().size());
        assertFalse(parsed.declarations().get(0).damaged());
        assertTrue(parsed.declarations().get(1).damaged());
        assertFalse(parsed.declarations().get(2).damaged());
    }

    @Test
    void a_line_that_begins_with_no_word_of_the_language_keeps_what_its_braces_hold() {
        Parsed parsed = Parsed.of("primal leg 33 % {\ncut chump 10 %\n}\n");
        assertEquals(List.of(SyntaxCode.UNKNOWN_LINE), codes(parsed));
        var unknown = (Statement.Unknown) parsed.file().statements().get(0);
        assertEquals(1, unknown.body().size());
    }

    @Test
    void a_misspelt_word_of_the_language_gets_the_nearest() {
        assertEquals(
                List.of("Did you mean “portion”?"),
                Parsed.of("porton steak 180 g").findings().get(0).help());
    }

    @Test
    void braces_are_told_where_they_open_or_close_in_vain() {
        Parsed open = Parsed.of("cut leg 33 % {\ncut chump 10 %\n");
        assertEquals(List.of(SyntaxCode.OPEN_BRACE), codes(open));
        assertEquals(List.of("{"), open.underlined());
        Parsed stray = Parsed.of("cut leg 33 %\n}\ncut loin 12 %\n");
        assertEquals(List.of(SyntaxCode.STRAY_BRACE), codes(stray));
        Parsed lone = Parsed.of("cut leg 33 %\n{\ncut chump 10 %\n}\n");
        assertEquals(List.of(SyntaxCode.LONE_BLOCK), codes(lone));
    }

    @ParameterizedTest
    @ValueSource(strings = {"½", "#", ";", "=", "~", "\u202E", "\u0000", "“", "\uE000"})
    void a_character_that_means_nothing_here_is_told_once_a_line(String character) {
        Parsed parsed = Parsed.of("cut leg 33 % " + character + character + "\n");
        assertEquals(List.of(SyntaxCode.STRAY_CHARACTER), codes(parsed));
        assertEquals(List.of(character), parsed.underlined());
    }

    @Test
    void a_name_has_at_most_128_characters_and_no_slash() {
        assertEquals("x".repeat(128), name("cut " + "x".repeat(128) + " 5 %"));
        assertEquals(List.of(SyntaxCode.BAD_NAME), codes(Parsed.of("cut " + "x".repeat(129) + " 5 %")));
        assertEquals(List.of(SyntaxCode.BAD_NAME), codes(Parsed.of("cut \"leg/loin\" 5 %")));
        assertEquals(List.of(SyntaxCode.BAD_NAME), codes(Parsed.of("cut \"\" 5 %")));
    }
}
