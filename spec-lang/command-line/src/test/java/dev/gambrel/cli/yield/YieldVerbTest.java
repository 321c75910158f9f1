package dev.gambrel.cli.yield;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Json;
import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class YieldVerbTest {
    @TempDir
    Path folder;

    private String hogget;

    @BeforeEach
    void write_the_sheet() {
        hogget = Run.write(folder, "hogget.cuts", Run.HOGGET);
    }

    private Run asked(String... options) {
        String[] args = new String[options.length + 2];
        args[0] = "yield";
        args[1] = hogget;
        System.arraycopy(options, 0, args, 2, options.length);
        return Run.of(args);
    }

    private double legs(String... options) {
        String[] all = java.util.stream.Stream.concat(
                        java.util.stream.Stream.of("--as", "json"), java.util.stream.Stream.of(options))
                .toArray(String[]::new);
        Run run = asked(all);
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        List<?> parts = (List<?>) ((Map<?, ?>) Json.parse(run.out())).get("parts");
        for (Object part : parts) {
            Map<?, ?> row = (Map<?, ?>) part;
            if ("leg".equals(row.get("name"))) {
                return ((BigDecimal) ((Map<?, ?>) row.get("allPieces")).get("mean")).doubleValue();
            }
        }
        throw new AssertionError("no leg");
    }

    /** Worked scene 2 of the design: 33.0 % of 22.0 kg is 7.2600 kg. */
    @Test
    void a_pair_of_legs_is_a_third_of_a_typical_hogget() {
        Run run = asked();
        assertEquals(ExitStatus.FINE, run.status());
        assertEquals("", run.err());
        assertTrue(run.out().startsWith("Marram hogget, revision 3, sheep\n"), run.out());
        assertTrue(run.out().contains("7.26"), run.out());
        assertEquals(7.26, legs(), 1e-12);
    }

    @Test
    void a_table_in_print_carries_the_cautions() {
        assertTrue(asked().out().contains("stimate"), asked().out());
    }

    /** 22.4 kg warm less 2 % chill shrink is 21.952 kg cold, of which 33 % are 7.24416 kg. */
    @Test
    void a_warm_weight_is_brought_to_the_basis_of_the_sheet() {
        assertEquals(7.24416, legs("--weight", "22.4 kg warm"), 1e-12);
        assertEquals(7.392, legs("--weight", "22.4 kg cold"), 1e-12);
        assertEquals(7.392, legs("--weight", "22.4 kg cold"), 1e-12);
        assertEquals(7.392, legs("--weight", " 22400g COLD "), 1e-12);
    }

    /** Worked scene of the design: 47 lb 6 oz is 21.488939 kg, of which 33 % are 7.0913499 kg. */
    @Test
    void a_weight_in_pounds_and_ounces_is_taken() {
        assertEquals(7.0913499, legs("--weight", "47 lb 6 oz cold"), 5e-7);
        assertEquals(7.0913499, legs("--weight", "47lb 6oz cold"), 5e-7);
        assertEquals(7.0913499, legs("--weight", "47.375 pounds cold"), 5e-7);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "22,4 kg",
                "22",
                "22 km",
                "kg",
                "",
                "  ",
                "22 kg frozen",
                "-22 kg",
                "22 kg 4",
                "22 kg 6 oz",
                "47 lb 6 g",
                "1.2.3 kg",
                ". kg",
                "1e5 kg",
                "11111111111111111111111111111111111 kg",
                "22 mm",
                "22 kg cold cold",
                "47 lb 6"
            })
    void what_is_no_weight_is_wrong_usage(String weight) {
        Run run = asked("--weight", weight);
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(
                run.err().contains("is not a carcass weight; write the figure with a point, its unit and"), run.err());
        assertEquals("", run.out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1111111111111111111111111111111111 lb 1 oz",
                "1 lb 0.11111111111111111111111111111111 oz",
                "1111111111111111111111111111111111 lb 0.00000000000000000000000000000001 oz"
            })
    void a_weight_of_very_many_digits_is_told_and_not_thrown(String weight) {
        Run run = asked("--weight", weight);
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertEquals("", run.out());
    }

    /** Worked scene 8 of the design: 47.4 kg is outside 20 to 24 kg; 47.4 lb is 21.500278 kg, inside: were these pounds? */
    @Test
    void a_weight_says_what_was_weighed() {
        Run run = asked("--weight", "22.4 kg");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("such as \"22.4 kg cold\""), run.err());
    }

    @Test
    void a_weight_outside_the_band_asks_about_pounds() {
        Run run = asked("--weight", "47.4 kg cold");
        assertTrue(run.err().contains("pounds") || run.err().contains("lb"), run.err());
        assertTrue(run.err().contains("?"), run.err());
        assertTrue(run.err().contains("47.4 kg"), run.err());
    }

    @Test
    void a_weight_on_a_basis_without_a_step_cannot_be_used() {
        Run run = asked("--weight", "45 kg live");
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals("", run.out());
        assertFalse(run.err().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"kg, 7.26", "g, 7260", "lb, 16.00556", "oz, 256.08896"})
    void weights_are_printed_in_the_unit_that_was_asked_for(String unit, double legs) {
        assertEquals(legs, legs("--unit", unit), 5e-6 * legs);
    }

    @ParameterizedTest
    @CsvSource({"0, 7", "1, 7.3", "2, 7.26", "3, 7.260", "6, 7.260000"})
    void figures_have_as_many_places_as_were_asked_for(String decimals, String legs) {
        String line = asked("--as", "csv", "--decimals", decimals)
                .out()
                .lines()
                .filter(row -> row.contains("leg"))
                .findFirst()
                .orElseThrow();
        assertTrue(List.of(line.split(",")).contains(legs), line);
    }

    @ParameterizedTest
    @CsvSource({
        "--unit, mm",
        "--unit, stone",
        "--unit, ''",
        "--decimals, 7",
        "--decimals, -1",
        "--decimals, two",
        "--decimals, ''",
        "--decimals, 10",
        "--as, pdf",
        "--as, ''"
    })
    void what_cannot_be_printed_is_wrong_usage(String option, String value) {
        Run run = asked(option, value);
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().startsWith("“" + value + "” is not a "), run.err());
        assertEquals("", run.out());
    }

    @Test
    void csv_is_nothing_but_the_data() {
        Run run = asked("--as", "csv");
        assertEquals(ExitStatus.FINE, run.status());
        long columns = run.out().lines().findFirst().orElseThrow().split(",", -1).length;
        assertTrue(columns > 3);
        assertFalse(run.out().contains("Checked:"));
        assertEquals("", run.err());
    }

    @Test
    void json_is_nothing_but_the_data() {
        Map<?, ?> yields = (Map<?, ?>) Json.parse(asked("--as", "JSON").out());
        assertEquals("gambrel expected yields", yields.get("format"));
        assertEquals("kg", yields.get("unit"));
        assertEquals("cold", yields.get("basis"));
        assertEquals("Marram hogget", yields.get("specification"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"csv", "json"})
    void what_accompanies_data_is_said_beside_it(String form) {
        Run run = asked(
                "--as",
                form,
                "--weight",
                "26 kg cold",
                "--tree",
                folder.resolve("tree.json").toString());
        assertTrue(run.err().contains("The tree was written as JSON to "));
        assertFalse(run.out().contains("The tree was written") || run.out().contains("→"));
        assertTrue(Files.isRegularFile(folder.resolve("tree.json")));
    }

    @Test
    void a_sheet_with_errors_gives_no_figures() {
        hogget = Run.write(folder, "hogget.cuts", Run.HOGGET.replace("rest -> mince", "cut loin 12 %"));
        Run run = asked("--as", "csv");
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("error G0501"));
    }

    @Test
    void a_sheet_without_a_band_asks_for_a_weight() {
        hogget = Run.write(folder, "hogget.cuts", Run.HOGGET.replace(", 20 kg to 24 kg", ""));
        Run run = asked();
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals("", run.out());
        assertEquals(7.26, legs("--weight", "22 kg cold"), 1e-12);
    }

    @Test
    void a_file_that_cannot_be_read_gives_no_figures() {
        Run run = Run.of("yield", folder.resolve("none.cuts").toString());
        assertEquals(ExitStatus.COULD_NOT, run.status());
        assertEquals("", run.out());
    }

    @Test
    void a_tree_in_json_yields_the_same_as_its_sheet() {
        String json = Run.write(folder, "tree.json", Run.of("tree", hogget).out());
        assertEquals(
                asked("--as", "csv").out(), Run.of("yield", json, "--as", "csv").out());
    }
}
