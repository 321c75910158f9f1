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
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Forty carcasses of 22 kg at once, and pairs that are not alike. */
class SeveralCarcassesTest {
    @TempDir
    Path folder;

    private String hogget;

    @BeforeEach
    void write_the_sheet() {
        hogget = Run.write(folder, "hogget.cuts", Run.HOGGET);
    }

    private Run asked(String... options) {
        return Run.of(
                Stream.concat(Stream.of("yield", hogget), Stream.of(options)).toArray(String[]::new));
    }

    private Map<?, ?> json(String... options) {
        Run run = asked(
                Stream.concat(Stream.of("--as", "json"), Stream.of(options)).toArray(String[]::new));
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        return (Map<?, ?>) Json.parse(run.out());
    }

    private static Map<?, ?> leg(Map<?, ?> yields) {
        return ((List<?>) yields.get("parts"))
                .stream()
                        .map(part -> (Map<?, ?>) part)
                        .filter(part -> "leg".equals(part.get("name")))
                        .findFirst()
                        .orElseThrow();
    }

    private static double number(Object figure) {
        return ((BigDecimal) figure).doubleValue();
    }

    /** By hand: 7.26 kg ± 0.198 kg a carcass; of 40 ± 0.198 √40, and from 16 tests a doubt of 40 × 0.198 / 4. */
    @Test
    void forty_carcasses_have_what_they_differ_by_and_the_doubt_of_sixteen_tests_apart() {
        Map<?, ?> yields = json("--carcasses", "40", "--cutting-tests", "16");
        Map<?, ?> legs = (Map<?, ?>) leg(yields).get("allCarcasses");
        assertEquals(290.4, number(legs.get("mean")), 1e-9);
        assertEquals(0.198 * Math.sqrt(40), number(legs.get("sdBetweenCarcasses")), 1e-9);
        assertEquals(1.98, number(legs.get("sdOfDoubt")), 1e-9);
        assertEquals(Math.sqrt(0.198 * 0.198 * 40 + 1.98 * 1.98), number(legs.get("sd")), 1e-9);
        assertEquals("both", yields.get("rangesHold"));
    }

    @Test
    void a_doubt_that_is_not_said_is_told_in_words_and_left_out_of_the_figures() {
        Run run = asked("--carcasses", "40");
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.out().contains("How sure the mean shares are is not said"), run.out());
        assertTrue(run.out().contains("estimates"), run.out());
        Map<?, ?> yields = json("--carcasses", "40");
        Map<?, ?> legs = (Map<?, ?>) leg(yields).get("allCarcasses");
        assertEquals("what carcasses differ by alone", yields.get("rangesHold"));
        assertFalse(legs.containsKey("sdOfDoubt"));
        assertFalse(legs.containsKey("sd"));
        assertTrue(legs.containsKey("low95"));
    }

    @Test
    void the_weight_of_each_may_be_given_and_a_finding_about_it_is_told_once() {
        Run run = asked("--carcasses", "40", "--weight", "18 kg cold", "--as", "csv");
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.out().contains("parts,leg,leg,product,between carcasses,1,80,237.60,"), run.out());
        assertEquals(run.err().indexOf("G1002"), run.err().lastIndexOf("G1002"), run.err());
    }

    /** By hand: 40 carcasses of 22 kg ± 1.5 kg weigh 880 kg ± 1.5 √40 kg. */
    @Test
    void the_weights_of_the_carcasses_may_stray() {
        Run run = asked("--carcasses", "40", "--weight-spread", "1.5 kg");
        assertTrue(
                run.out().contains("Expected for 40 carcasses of 22.00 kg ± 1.500 kg each, weighed cold"), run.out());
        Map<?, ?> yields = json("--carcasses", "40", "--weight-spread", "1500 g");
        Map<?, ?> all = (Map<?, ?>) ((Map<?, ?>) ((List<?>) yields.get("parts")).get(0)).get("allCarcasses");
        assertEquals(1.5 * Math.sqrt(40), number(all.get("sdBetweenCarcasses")), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.5", "1.5 mm", "-1 kg", "much", ""})
    void what_is_no_weight_is_no_spread_of_weights(String spread) {
        assertEquals(
                ExitStatus.WRONG_USAGE,
                asked("--carcasses", "40", "--weight-spread", spread).status());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "2.5", "forty", "10000000", ""})
    void what_is_no_number_of_carcasses_is_a_wrong_call(String number) {
        assertEquals(ExitStatus.WRONG_USAGE, asked("--carcasses", number).status());
        assertEquals(
                ExitStatus.WRONG_USAGE,
                asked("--carcasses", "40", "--cutting-tests", number).status());
    }

    @Test
    void what_is_said_of_several_carcasses_says_nothing_of_one() {
        Run run = asked("--cutting-tests", "12");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("--carcasses"), run.err());
        assertEquals(ExitStatus.WRONG_USAGE, asked("--weight-spread", "1.5 kg").status());
        Run astray = asked("--carcasses", "40", "--weight-spread", "30 kg");
        assertEquals(ExitStatus.WRONG_USAGE, astray.status());
        assertTrue(astray.err().contains("Carcasses of 22.0 kg do not stray by 30 kg"), astray.err());
    }

    private double sdOfOneLeg(String... options) {
        return number(((Map<?, ?>) leg(json(options)).get("onePiece")).get("sd"));
    }

    /** By hand: both legs ± 0.198 kg. */
    @Test
    void pairs_are_alike_unless_something_else_is_said_and_then_the_answer_says_so() {
        assertEquals(0.099, sdOfOneLeg(), 1e-12);
        assertEquals(0.099, sdOfOneLeg("--pairs", "alike"), 1e-12);
        assertEquals(0.198 / Math.sqrt(2), sdOfOneLeg("--pairs", "independent"), 1e-12);
        assertEquals(0.11, sdOfOneLeg("--pairs", "0.62"), 1e-12);
        assertFalse(json().containsKey("correlationOfPairs"));
        assertEquals(0.62, number(json("--pairs", "0.62").get("correlationOfPairs")));
        String heading = "The two pieces of a pair are taken as ";
        assertFalse(asked().out().contains(heading));
        assertTrue(asked("--pairs", "independent").out().contains(heading + "independent\n"));
        assertTrue(asked("--pairs", "0.8").out().contains(heading + "correlated by 0.8\n"));
    }

    /**
     * What is stated is the spread of both legs together, so that small portions from all legs stray alike however alike the two
     * are: by 0.198 kg √40, which is 25 portions of 50 g. Legs that stray by themselves but were counted as alike would stray by 35.
     */
    @Test
    void what_is_promised_of_several_carcasses_knows_how_their_pairs_vary() {
        String steaks = Run.write(
                folder,
                "steaks.cuts",
                Run.HOGGET.replace(
                        "two per carcass", "two per carcass {\n  portion steak 50 g, remainder -> mince\n}"));
        long alike = promised(steaks, "alike");
        assertEquals(5_768 - 1.645 * 25, alike, 4);
        assertEquals(alike, promised(steaks, "independent"), 2);
        assertEquals(alike, promised(steaks, "0.5"), 2);
    }

    private static long promised(String sheet, String pairs) {
        Run run = Run.of("yield", sheet, "--as", "json", "--promise", "95 % from 40 carcasses", "--pairs", pairs);
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        Map<?, ?> portion = (Map<?, ?>) ((List<?>) ((Map<?, ?>) Json.parse(run.out())).get("portions")).get(0);
        return ((Number) ((Map<?, ?>) ((List<?>) portion.get("promised")).get(0)).get("promised")).longValue();
    }

    @Test
    void what_is_promised_names_carcasses_of_its_own() {
        Run run = asked("--carcasses", "40", "--promise", "95 % from 40 carcasses");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("leave --carcasses out"), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"same", "1.5", "-0.5", "80 %", "NaN", ""})
    void what_does_not_say_how_pairs_vary_is_a_wrong_call(String word) {
        assertEquals(ExitStatus.WRONG_USAGE, asked("--pairs", word).status());
    }
}
