package dev.gambrel.cli.yield;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Json;
import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Portions by weight, by thickness and by number, in each form of output. */
class PortionsInPrintTest {
    private static final String SHEET = """
            language 1
            species sheep
            specification "Portions" revision 1 for sheep
            carcass cold, 20 kg to 24 kg
            stream dice, saleable
            cut flat, two per carcass, 5 % ± 0.3 % {
              portion joint, halved, between 250 g and 300 g, tied 4 times, tare twine 5 g
            }
            cut loin, two per carcass, 9 % ± 0.4 % {
              portion chop 25 mm thick, kerf 2 mm, length 187 mm ± 8 mm, at least 7 from a side, remainder -> dice
            }
            cut topside, two per carcass, 7 % ± 0.3 % {
              portion steak 170 g ± 6 g, between 18 mm and 22 mm thick, weight rules, remainder -> dice
            }
            rest -> dice
            """;

    @TempDir
    Path folder;

    private String sheet;

    @BeforeEach
    void write() {
        sheet = Run.write(folder, "portions.cuts", SHEET);
    }

    private Map<?, ?> portion(String name) {
        Map<?, ?> yields =
                (Map<?, ?>) Json.parse(Run.of("yield", sheet, "--as", "json").out());
        return ((List<?>) yields.get("portions"))
                .stream()
                        .map(portion -> (Map<?, ?>) portion)
                        .filter(portion -> portion.get("portion").equals(name))
                        .findFirst()
                        .orElseThrow();
    }

    private static double figure(Map<?, ?> object, String name) {
        return ((BigDecimal) object.get(name)).doubleValue();
    }

    /** Seven chops need 7 × 25 + 6 × 2 = 187 mm, the mean length: they come from half of the loins. */
    @Test
    void at_least_seven_chops_come_from_half_of_the_sides() {
        Map<?, ?> chop = portion("chop");
        assertEquals(0.5, figure(chop, "chanceOfFewest"), 1e-12);
        assertEquals(0.99 * 25 / 187, figure((Map<?, ?>) chop.get("eachPortion"), "mean"), 1e-12);
        assertFalse(chop.containsKey("givenAwayOfEach"));
    }

    /** 170 / (1.05 × 2.2) and 170 / (1.05 × 1.8). */
    @Test
    void json_tells_how_large_a_muscle_keeps_weight_and_thickness() {
        Map<?, ?> area = (Map<?, ?>) portion("steak").get("muscleSquareCentimetres");
        assertEquals(170 / (1.05 * 2.2), figure(area, "least"), 1e-9);
        assertEquals(170 / (1.05 * 1.8), figure(area, "most"), 1e-9);
    }

    @Test
    void what_is_not_known_is_left_out_of_json() {
        Map<?, ?> joint = portion("joint");
        assertEquals(4, figure(joint, "expectedNumberFromAll"));
        assertFalse(joint.containsKey("lostToKerfOfOne"));
        assertFalse(joint.containsKey("muscleSquareCentimetres"));
    }

    /** 22 kg × 9 % = 1.98 kg. */
    @Test
    void the_lines_of_a_portion_in_csv_add_up_to_its_cut() {
        List<String> chops = Run.of("yield", sheet, "--as", "csv")
                .out()
                .lines()
                .filter(line -> line.startsWith("portions,chop"))
                .toList();
        assertEquals(3, chops.size());
        double all = chops.stream()
                .mapToDouble(line -> Double.parseDouble(line.split(",", -1)[6]))
                .sum();
        assertEquals(1.98, all, 0.011);
    }

    @Test
    void print_says_what_holds_a_joint_together_and_that_it_is_not_meat() {
        String out = Run.of("yield", sheet).out();
        assertTrue(out.contains("tied 4 times, twine 5 g tare"), out);
        assertTrue(out.contains("Tare is not meat and is in no weight here."), out);
        assertTrue(out.contains("73.6 to 89.9"), out);
        assertTrue(out.contains("7: 50 %"), out);
    }

    @Test
    void a_promise_is_never_said_to_be_surer_than_it_is() {
        String out = Run.of("yield", sheet, "--promise", "99.9999999999 % from 1 carcass")
                .out();
        assertTrue(out.contains(" 99.9999999999 % sure\n"), out);
    }

    /** One half of the loins gives seven chops, so of one carcass 12 are sure and 14 are not; a joint is halved in any case. */
    @Test
    void what_can_be_promised_is_printed_for_each_portion() {
        String out =
                Run.of("yield", sheet, "--promise", "95 % from 40 carcasses").out();
        assertTrue(out.matches("(?s).*from 40 carcasses +expected +± +95 % sure\n.*"), out);
        assertTrue(out.matches("(?s).*\njoint into 2, flat +160\\.0 +0\\.0 +160\n.*"), out);
        assertTrue(out.contains("Each carcass is taken to weigh 22.00 kg, and each varies by itself."), out);
        assertTrue(
                out.contains("Not counted: that carcasses weigh more and less, and that the mean shares may be off."),
                out);
    }

    /** Seven or more come from half of the loins, and all chances together are certainty. */
    @Test
    void json_tells_how_likely_each_number_is() {
        double sum = 0;
        double sevenOrMore = 0;
        for (Object each : (List<?>) portion("chop").get("numbersFromOne")) {
            double chance = figure((Map<?, ?>) each, "chance");
            sum += chance;
            sevenOrMore += figure((Map<?, ?>) each, "number") >= 7 ? chance : 0;
        }
        assertEquals(1, sum, 1e-5);
        assertEquals(0.5, sevenOrMore, 1e-5);
    }

    @Test
    void a_promise_counts_what_cutting_tests_leave_in_doubt() {
        String told = Run.of("yield", sheet, "--promise", "95 % from 40 carcasses", "--cutting-tests", "6")
                .out();
        assertTrue(told.contains("Counted: that the mean shares may be off"), told);
        String json = Run.of(
                        "yield", sheet, "--as", "json", "--promise", "95 % from 40 carcasses", "--cutting-tests", "6")
                .out();
        assertTrue(json.contains("\"cuttingTests\" : 6"), json);
    }

    @Test
    void csv_and_json_tell_the_same_promises() {
        String csv = Run.of("yield", sheet, "--as", "csv", "--promise", "90% from 1 carcass")
                .out();
        assertTrue(csv.contains("\npromised,\"joint: from 1 carcass, 90 % sure\",flat,,1,4,"), csv);
        Map<?, ?> yields =
                (Map<?, ?>) Json.parse(Run.of("yield", sheet, "--as", "json", "--promise", "90 % from 1 carcass")
                        .out());
        Map<?, ?> joint = (Map<?, ?>) ((List<?>) yields.get("portions")).get(0);
        Map<?, ?> promised = (Map<?, ?>) ((List<?>) joint.get("promised")).get(0);
        assertEquals(4, figure(promised, "promised"));
        assertEquals(0.9, figure(promised, "certainty"));
        assertFalse(portion("joint").containsKey("promised"));
    }

    @Test
    void a_promise_that_cannot_be_read_is_told_with_an_example() {
        for (String wrong :
                List.of("95 from 40", "100 % from 40 carcasses", "0 % from 1 carcass", "9 % from 0 carcasses")) {
            Run run = Run.of("yield", sheet, "--promise", wrong);
            assertEquals(ExitStatus.WRONG_USAGE, run.status());
            assertTrue(run.err().contains(wrong), run.err());
        }
    }
}
