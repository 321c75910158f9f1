package dev.gambrel.references.gs1;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ElementStringsTest {
    private static final String ITEM = "(01)91234567890121";

    private static Result<ElementString> read(String text) {
        return ElementStrings.read(new SourceText("label", text));
    }

    private static String found(String text) {
        return read(text).diagnostics().stream()
                .map(finding -> finding.code().id())
                .collect(Collectors.joining(" "));
    }

    /** Numbers and their check digits as GS1 and its national organisations print them; each source is named beside. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            629104150021, 3, GS1 check digit calculator
            730001100001, 7, GS1 Sweden
            501234567890, 0, GS1 UK
            501234567421, 6, GS1 UK
            890400021003, 7, GS1 India
            0234567, 3, GS1 Barcode Syntax Dictionary
            41600033610, 8, GS1 Barcode Syntax Dictionary
            123456789012, 8, GS1 Barcode Syntax Dictionary
            1234567890123, 1, GS1 Barcode Syntax Dictionary
            12345678901234567, 5, GS1 Barcode Syntax Dictionary
            """)
    void check_digits_are_those_in_print(String digits, int check, String source) {
        assertEquals(check, CheckDigit.of(digits), source);
        assertTrue(CheckDigit.isRight(digits + check), source);
        for (int other = 0; other <= 9; other++) {
            assertEquals(other == check, CheckDigit.isRight(digits + other), source);
        }
    }

    /** The first two of GS1 Denmark, the third of a note on the rule of 310n. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            3100, 000035, 35 kg
            3103, 000035, 0.035 kg
            3102, 001234, 12.34 kg
            """)
    void the_identifier_tells_the_decimals_of_a_weight(String identifier, String value, String weight) {
        ElementString label = read(ITEM + "(" + identifier + ")" + value).orElseThrow();
        assertEquals(weight, label.netWeight().orElseThrow().toString());
    }

    @Test
    void brackets_and_raw_say_the_same() {
        ElementString people = read(ITEM + "(10)A1(3103)000035").orElseThrow();
        ElementString scanner =
                read("]C1" + "0191234567890121" + "10A1\u001d" + "3103000035").orElseThrow();
        assertEquals(people, scanner);
        assertEquals("019123456789012110A1\u001d3103000035", people.raw());
        assertEquals(ITEM + "(10)A1(3103)000035", scanner.bracketed());
        assertEquals("91234567890121", people.gtin().orElseThrow().digits());
    }

    @Test
    void a_separator_after_a_value_of_fixed_length_does_no_harm() {
        assertEquals(
                read("01912345678901213103000035").orElseThrow(),
                read("\u001d0191234567890121\u001d3103000035\u001d").orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            G2012; (99)A1
            G2012; (9)A1
            G2012; ()
            G2013; (01)9123456789012
            G2013; (01)91234567890121(3103)35
            G2013; (01)91234567890121(3103)00003５
            G2013; (01)91234567890121(3103)000035(10)
            G2013; (01)91234567890121(3103)000035(10)ABCDEFGHIJKLMNOPQRSTU
            G2013; (01)91234567890121(3103)000035(10)A B
            G2012; (01)91234567890121(3106)000035
            G2012; (01)91234567890121(3103)000035(10)A1(8200)x
            G2014; (01)91234567890122(3103)000035
            G2015; (01)91234567890121(3103)000035(17)260230
            G2015; (01)91234567890121(3103)000035(17)261301
            G2015; (01)91234567890121(3103)000035(15)250229
            G2016; (10)A1
            G2016; (3103)000035
            G2018 G2016 G2016; (01)91234567890121(3103)000035(37)5
            G2017; (01)91234567890121(3103)000500(3103)000600
            G2017; (01)91234567890121(3103)000500(3203)002000
            G2018; (01)91234567890121(3103)000500(3102)000050
            G2018; (01)91234567890121(3103)000500(422)246(426)246
            G2019; (01)91234567890121(3103)000500(10)A(10)A
            G2020; (01)91234567890121(3103)000500(7002)44932211340000145100
            G2006; (01)91234567890121(3103)000500(7002)10164400153201040050
            G2021; (01)91234567890121(10)A1
            G2022; (01)91234567890121(3103)000500(13)260210(17)260209
            ''; (01)91234567890121(3103)000500(13)260210(17)260200
            ''; (01)91234567890121(3103)000500(3203)001102
            ''; (01)91234567890121(3103)000500(13)991231(17)000105
            ''; (01)91234567890121(3103)000500(7030)246A1(7031)246A2
            """)
    void a_label_is_held_against_the_rules(String codes, String label) {
        assertEquals(codes, found(label));
    }

    @Test
    void hostile_text_is_refused_and_bounded() {
        assertEquals("G2011", found("(10)" + "A".repeat(ElementStrings.LONGEST)));
        assertEquals("G2013", found(ITEM + "(3103)000035(10)" + "A".repeat(3_900)));
        assertEquals("G2012", found(""));
        assertEquals("G2012", found("\u001d"));
        assertEquals("G2012", found("]C1"));
        assertEquals("G2013", found(ITEM + "(3103)000035(10)A\u001b[31m"));
        String many = ITEM + "(3103)000035" + "(10)A".repeat(700);
        assertEquals(699, read(many).diagnostics().size());
    }

    /** The rule of the century, from memory of the GS1 General Specifications, 7.12. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            261130, 2026, 2026-11-30
            760101, 2026, 2076-01-01
            770101, 2026, 1977-01-01
            010101, 1999, 2001-01-01
            480101, 1998, 2048-01-01
            490101, 1998, 1949-01-01
            260200, 2026, 2026-02-28
            280200, 2026, 2028-02-29
            """)
    void the_century_follows_from_the_year_of_reading(String digits, int reading, String day) {
        assertEquals(
                day, Gs1Date.of(digits).orElseThrow().in(reading).orElseThrow().toString());
    }

    @Test
    void a_day_that_its_century_does_not_have_is_none() {
        assertTrue(Gs1Date.of("000229").orElseThrow().in(2000).isPresent());
        assertFalse(Gs1Date.of("000229").orElseThrow().in(2080).isPresent());
        assertEquals(List.of(), Gs1Date.of("260230").stream().toList());
    }
}
