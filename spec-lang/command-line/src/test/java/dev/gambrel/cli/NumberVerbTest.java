package dev.gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.references.code.ReferenceCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberVerbTest {
    private static final String ITEM = "(01)91234567890121(3103)000500";

    private static Run number(String... args) {
        List<String> all = new ArrayList<>(List.of("number"));
        all.addAll(List.of(args));
        return Run.of(all.toArray(String[]::new));
    }

    /** The test value of a public decoder that quotes the bovine standard of 2007. */
    @Test
    void a_meat_code_is_told_digit_by_digit() {
        Run run = number("10164300153201040050");
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertEquals("", run.err());
        assertEquals("""
                UNECE meat code 10164300153201040050

                1-2  species                10    beef
                3-6  cut                    1643  Brisket, bone in
                7-8  not used               00
                9    refrigeration          1     chilled
                10   category               5     steer and/or heifer
                11   production system      3     organic
                12   feeding system         2     forage fed
                13   not used               0
                14   slaughter system       1     conventional
                15   post-slaughter system  0     not specified
                16   fat thickness          4     3 mm
                17   quality system         0     not specified
                18   weight range           0     not specified
                19   packing                5     cuts - vacuum packed
                20   conformity assessment  0     not specified

                That 3 mm of fat is a limit at any point is from memory.
                Where it stands:
                  UNECE Standard Bovine Meat, Carcases and Cuts, 2007 (seen as quoted elsewhere)
                """, run.out());
    }

    @Test
    void a_label_is_told_with_its_meat_code_and_a_caution() {
        Run run = number(ITEM + "(17)261200(7002)10164300153201040050(10)A1", "--year", "2026");
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(run.out().contains("NET WEIGHT (kg)        000500                0.500 kg\n"), run.out());
        assertTrue(run.out().contains("2026-12-31, the last day of the month since none is given\n"), run.out());
        assertTrue(run.out().contains("Brisket, bone in\n"), run.out());
        assertTrue(run.out().contains("section 7.12, century of a date and day 00, edition not known (from memory)"));
        assertTrue(run.out().contains("not whether goods are past a date"), run.out());
    }

    @Test
    void without_a_year_no_century_is_told() {
        Run run = number(ITEM + "(17)261231");
        assertTrue(run.out().contains("26-12-31\n"), run.out());
        assertTrue(run.out().contains("give --year to have it told"), run.out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "019123456789012110A1\u001d3103000500",
                "]C1019123456789012110A1\u001d3103000500",
                "01912345678901213103000500"
            })
    void what_a_scanner_read_is_told_apart_from_a_meat_code(String scanned) {
        Run run = number(scanned);
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(run.out().startsWith("GS1 element string (01)91234567890121"), run.out());
        assertEquals(run.out(), number("GS1", scanned).out());
    }

    @Test
    void a_piece_on_the_edge_is_told_with_the_rule() {
        Run run = number("IMPS", "112", "--weight", "8 lb");
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(run.out().contains("1997  a piece       8 lb  in C, on the edge\n"), run.out());
        assertTrue(run.out().contains("The print gives no rule; this one is ours."), run.out());
    }

    @Test
    void what_is_from_memory_says_so() {
        Run run = number("IMPS", "112a", "--weight", "3.9 kg", "--range", "B");
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.err().startsWith("warning G2035 "), run.err());
        assertTrue(run.out().contains("What is from memory must be looked up before anything rests on it."), run.out());
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            UNECE, 2240, 'Cube roll (rib eye roll), boneless'
            unece, 1643, 'Brisket, bone in'
            Australian, 4930, 'Rack (7 rib), bone not stated'
            GTIN, 6291041500213, 'check digit right'
            """)
    void numbers_of_all_kinds_are_known(String scheme, String number, String meaning) {
        Run run = number(scheme, number);
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(run.out().contains(meaning + "\n"), run.out());
    }

    @Test
    void json_has_the_same_parts() {
        Map<?, ?> json =
                (Map<?, ?>) Json.parse(number("IMPS", "410", "--edition", "2014", "--weight", "18 lb", "--as", "json")
                        .out());
        assertEquals("published number", json.get("kind"));
        List<?> parts = (List<?>) json.get("parts");
        assertEquals(
                Map.of("position", "2014", "what", "a piece", "value", "18 lb", "meaning", "in B, on the edge"),
                parts.get(parts.size() - 1));
        assertEquals(false, json.get("restsOnMemory"));
        assertEquals(2, ((List<?>) json.get("sources")).size());
        assertFalse(((List<?>) json.get("notes")).isEmpty());
    }

    /** A slip, its code, how the program ends. */
    private enum Slip {
        SHORT("G2001", "1016430015320104005"),
        LETTER("G2002", "1016430015320104005O"),
        SPECIES("G2003", "44932200340000145100"),
        UNUSED("G2004", "10164301153201040050"),
        VALUE("G2005", "10164300453201040050"),
        CUT("G2006", "10164400153201040050"),
        LONG("G2011", "(10)" + "A".repeat(5_000)),
        NO_IDENTIFIER("G2012", "(99)A1"),
        VALUE_FORM("G2013", "(01)91234567890121(3103)35"),
        CHECK_DIGIT("G2014", "6291041500214"),
        NO_DAY("G2015", ITEM + "(17)261331"),
        ALONE("G2016", "(10)A1"),
        DISAGREES("G2017", ITEM + "(3203)002000"),
        EXCLUDED("G2018", ITEM + "(3102)000050"),
        REPEATED("G2019", ITEM + "(10)A(10)A"),
        NO_MEAT_CODE("G2020", ITEM + "(7002)44932211340000145100"),
        NO_WEIGHT("G2021", "(01)91234567890121(10)A1"),
        DATES("G2022", ITEM + "(13)260210(17)260101"),
        NO_GTIN("G2023", "GTIN", "62910415002"),
        NOT_HELD("G2031", "UNECE", "9999"),
        EDITION("G2032", "UNECE", "2240", "--edition", "1999"),
        NO_RANGES("G2033", "UNECE", "2240", "--weight", "3 kg"),
        IN_NONE("G2034", "IMPS", "112", "--weight", "4 lb"),
        MEMORY("G2035", "IMPS", "112A"),
        NO_RANGE("G2036", "IMPS", "408", "--range", "D"),
        OTHER_RANGE("G2037", "IMPS", "112", "--range", "B", "--weight", "8 lb"),
        SEVERAL("G2038", "IMPS", "410");

        private final String code;
        private final String[] args;

        Slip(String code, String... args) {
            this.code = code;
            this.args = args;
        }
    }

    @ParameterizedTest
    @EnumSource(Slip.class)
    void a_slip_is_found_and_nothing_is_guessed(Slip slip) {
        Run run = number(slip.args);
        assertTrue(run.err().contains(" " + slip.code + " "), run.err());
        boolean isError = run.err().contains("error " + slip.code);
        assertEquals(isError ? ExitStatus.FINDINGS : ExitStatus.FINE, run.status());
        assertTrue(isError || !run.out().isEmpty(), run.err());
    }

    @Test
    void every_kind_of_finding_has_a_slip() {
        Set<String> covered = new TreeSet<>();
        Stream.of(Slip.values()).forEach(slip -> covered.add(slip.code));
        Set<String> wanted = new TreeSet<>();
        Stream.of(ReferenceCode.values()).forEach(code -> wanted.add(code.id()));
        assertEquals(wanted, covered);
    }

    @Test
    void a_stranger_s_text_does_not_steer_the_terminal() {
        for (String sly : List.of("1016430015320104\u001b[31m", "(01)\u001b]0;x\u0007", "10164300153201\u202e40050")) {
            Run run = number(sly);
            assertEquals(ExitStatus.FINDINGS, run.status());
            assertFalse((run.out() + run.err()).matches("(?s).*[\u001b\u0007\u202e].*"), run.err());
        }
        assertTrue(number("(10)" + "(10)A".repeat(700)).err().length() < 40_000);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UNECE",
                "UNECE 22 40",
                "10164300153201040050 --weight 8lb",
                "10164300153201040050 --year 2026",
                "IMPS 112 --weight 8",
                "IMPS 112 --weight 8mm",
                "IMPS 112 --year 2026",
                "GS1",
                "(01)91234567890121 --year 26"
            })
    void wrong_usage_is_told(String args) {
        Run run = number(args.split(" "));
        assertEquals(ExitStatus.WRONG_USAGE, run.status(), run.out() + run.err());
        assertTrue(run.err().contains("→ See: gambrel number --help"), run.err());
    }
}
