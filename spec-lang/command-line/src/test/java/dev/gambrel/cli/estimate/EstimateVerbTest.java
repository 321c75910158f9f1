package dev.gambrel.cli.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EstimateVerbTest {
    /** The worked example of 7 CFR 54.105 as North Dakota State University prints it: 2.75, official grade 2. */
    private static final List<String> NDSU = List.of(
            "--weight", "750 lb warm",
            "--measure", "fat thickness = 0.40 in",
            "--measure", "kidney pelvic and heart fat = 2.5 %",
            "--measure", "ribeye area = 12.8 in2");

    @TempDir
    Path folder;

    private String beef;
    private String hogget;

    @BeforeEach
    void write_the_sheets() {
        beef = Run.write(folder, "beef.cuts", """
                language 1
                use "catalogue:beef equations"
                species beef {
                }
                specification "House beef" revision 1 for beef
                carcass warm
                stream mince, saleable
                cut retail beef, estimated by beef retail cuts by grade
                rest -> mince
                """);
        hogget = Run.write(folder, "hogget.cuts", Run.HOGGET);
    }

    private static Run run(String verb, String file, List<String> more) {
        List<String> args = new java.util.ArrayList<>(List.of(verb, file));
        args.addAll(more);
        return Run.of(args.toArray(String[]::new));
    }

    @Test
    void each_estimate_is_told_with_its_value_and_its_source() {
        Run run = run("estimate", beef, NDSU);
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        String grade = "beef yield grade\n  2.754, spread not stated; source: carcass beef standard (published)\n";
        assertTrue(run.out().startsWith(grade), run.out());
        assertTrue(run.out().contains("official beef yield grade\n  2, "), run.out());
        assertTrue(run.out().contains("50.3684 %, spread not stated; source: Murphey equation (memory)\n"), run.out());
        assertTrue(run.out().contains("take-home beef\n  525 lb, "), run.out());
    }

    @Test
    void without_readings_it_tells_what_has_to_be_measured() {
        Run run = run("estimate", beef, List.of());
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(
                run.out()
                        .contains(
                                "beef yield grade\n  needs fat thickness, kidney pelvic and heart fat, warm weight, ribeye"
                                        + " area; source"),
                run.out());
    }

    @Test
    void a_specification_without_estimates_says_so() {
        assertTrue(run("estimate", hogget, List.of()).out().startsWith("Nothing is estimated here.\n"));
    }

    @Test
    void the_yield_takes_the_same_readings() {
        Run run = run("yield", beef, NDSU);
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(run.out().contains("50.57"), run.out());
        Run without = run("yield", beef, NDSU.subList(0, 4));
        assertEquals(ExitStatus.FINDINGS, without.status());
        assertTrue(without.err().contains("G1320"), without.err());
    }

    @Test
    void a_reading_that_is_not_measured_here_is_an_error() {
        Run run = run("estimate", beef, List.of("--measure", "fat thicknes = 0.4 in"));
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.err().contains("Did you mean “fat thickness”?"), run.err());
        assertFalse(run.out().contains("yield grade"), run.out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fat thickness",
                "= 4 mm",
                "fat thickness =",
                "fat thickness = 4 furlongs",
                "fat thickness = 4.4.4 mm",
                "fat thickness = -",
                "fat thickness = 11111111111111111111111111111111111 mm",
                "a/b = 4 mm"
            })
    void what_is_no_reading_is_wrong_usage(String written) {
        Run run = run("estimate", beef, List.of("--measure", written));
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("is not a reading"), run.err());
    }

    @Test
    void one_reading_is_given_once() {
        Run run = run(
                "estimate", beef, List.of("--measure", "ribeye area = 12 in²", "--measure", "Ribeye Area = 13 in²"));
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
    }
}
