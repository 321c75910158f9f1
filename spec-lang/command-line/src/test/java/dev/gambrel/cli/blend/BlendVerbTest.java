package dev.gambrel.cli.blend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BlendVerbTest {
    private static final String EIGHTIES = "80s = 120 kg, lean 80 % visual";
    private static final String FLANK = "flank = 60 kg lean 55 % ± 4 % visual";

    private static final String SHEET = """
            language 1
            species sheep
            specification "Marram hogget" revision 3 for sheep
            carcass cold, 20 kg to 20 kg
            stream mince, saleable, lean 80 % visual
            stream diced, saleable, lean 95 % visual
            stream sausage, saleable
            stream bones, by-product
            cut leg 30 % ± 1 %, two per carcass -> diced
            cut breast 20 % ± 1 %, two per carcass -> mince, lean 60 % visual
            cut neck 10 % ± 1 % -> sausage
            rest -> bones
            """;

    @TempDir
    Path folder;

    private static Run blend(String lean, String... more) {
        List<String> args = new ArrayList<>(List.of("blend", "--tub", EIGHTIES, "--tub", FLANK, "--lean", lean));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    @Test
    void a_promise_is_never_said_to_be_surer_than_it_is() {
        String tub = "a = 5 kg, lean 90 % ± 1 % visual";
        String lean = "at least 75 % visual";
        String out = Run.of("blend", "--tub", tub, "--lean", lean, "--batch", "5 kg", "--promise", "99.9999999999 %")
                .out();
        assertTrue(out.contains("in 99.9999999999 of 100 batches"), out);
        out = Run.of("blend", "--tub", tub, "--lean", lean, "--batch", "5 kg", "--promise", "95 %")
                .out();
        assertTrue(out.contains("in 95 of 100 batches"), out);
    }

    @Test
    void lean_strays_by_no_more_than_all_of_it() {
        Run run = Run.of("blend", "--tub", "a = 5 kg, lean 75 % ± 750 % visual", "--lean", "at least 75 % visual");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
    }

    @Test
    void the_largest_batch_tells_what_is_taken_left_and_missing() {
        assertEquals("""
                The largest batch of at least 75 % lean, visual

                tub    there, kg  lean, %    ± points  taken, kg  left, kg
                80s       120.00    80.00  not stated     120.00      0.00
                flank      60.00    55.00        4.00      30.00     30.00
                all       180.00    75.00  not stated     150.00     30.00
                The lean of all is that of what is taken.

                What would use up the rest as well, being leaner:
                  24.00 kg that is 100 % lean, or
                  46.15 kg that is 88 % lean, or
                  100.00 kg that is 81 % lean.

                """, upToTheNotes(blend("at least 75 % visual").out()));
    }

    @Test
    void a_batch_of_a_given_weight_is_the_cheapest() {
        Run run = Run.of(
                "blend",
                "--tub",
                "lean pork = 100 kg, lean 90 % chemical, 5.00 a kg",
                "--tub",
                "belly = 100 kg, lean 50 % chemical, 2.00 a kg",
                "--lean",
                "78 % to 82 % chemical",
                "--batch",
                "40 kg",
                "--limit",
                "belly at most 20 kg");
        assertEquals("""
                The cheapest batch of 78 % to 82 % lean, chemical

                tub        there, kg  lean, %    ± points  taken, kg  left, kg
                belly         100.00    50.00  not stated      12.00     88.00
                lean pork     100.00    90.00  not stated      28.00     72.00
                all           200.00    78.00  not stated      40.00    160.00
                The lean of all is that of what is taken.

                Kept: belly at most 20 kg
                It costs 164.00, 4.1000 a kg.
                A target one point leaner costs 0.0750 a kg more.
                A target one point fatter costs 0.0750 a kg less.

                """, upToTheNotes(run.out()));
        assertEquals(ExitStatus.FINE, run.status());
    }

    private static String upToTheNotes(String out) {
        assertTrue(out.contains("have the blend analysed: local codes and licensed practice decide"), out);
        return out.substring(0, out.indexOf("Printed weights"));
    }

    /** Of 20 kg, 30 % dice and 20 % breast; ten carcasses. The mince comes out at 60 %, whatever it is meant to be. */
    @Test
    void the_streams_of_carcasses_are_tubs_as_lean_as_their_sources() {
        String file = Run.write(folder, "hogget.cuts", SHEET);
        Run run = Run.of("blend", file, "--lean", "at least 85 % visual", "--carcasses", "10", "--decimals", "1");
        assertEquals("""
                The largest batch of at least 85 % lean, visual

                tub    there, kg  lean, %    ± points  taken, kg  left, kg
                diced       60.0    95.00  not stated       60.0       0.0
                mince       40.0    60.00  not stated       24.0      16.0
                all        100.0    85.00  not stated       84.0      16.0
                The lean of all is that of what is taken.

                What would use up the rest as well, being leaner:
                  26.7 kg that is 100 % lean, or
                  57.1 kg that is 92 % lean, or
                  100.0 kg that is 89 % lean.
                Streams are what 10 carcasses, each of 20 kg, weighed cold, should give by Marram hogget, revision 3.
                Left out: sausage: nothing says how lean it is

                """, upToTheNotes(run.out()));
    }

    @Test
    void what_portioning_leaves_over_is_said_to_be_in_no_tub() {
        String portioned = SHEET.replace(
                "two per carcass -> diced",
                "two per carcass {\n  cut chump 10 % {\n"
                        + "    portion steak 150 g, remainder -> diced\n  }\n  rest -> diced\n}");
        String out = Run.of("blend", Run.write(folder, "steaks.cuts", portioned), "--lean", "at least 60 % visual")
                .out();
        assertTrue(
                out.contains(
                        "Streams are what 1 carcass of 20 kg, weighed cold, should give by Marram hogget, revision 3.\n"
                                + "What portioning leaves over is not in them.\n"),
                out);
    }

    @Test
    void how_surely_a_batch_is_lean_enough_is_told_without_idle_noughts() {
        String[] args = {"blend", "--tub", "80s = 90 kg, lean 80 % ± 2 % visual", "--tub", FLANK};
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(List.of("--lean", "at least 75 % visual", "--batch", "50 kg", "--promise", "95 %"));
        String out = Run.of(all.toArray(String[]::new)).out();
        assertTrue(out.contains("75 % lean, visual, in 95 of 100 batches\n"), out);
    }

    @Test
    void of_the_streams_only_those_that_are_named_go_in() {
        String file = Run.write(folder, "hogget.cuts", SHEET);
        Run run = Run.of("blend", file, "--lean", "at least 55 % visual", "--from", "mince");
        assertTrue(run.out().contains("mince"), run.out());
        assertTrue(!run.out().contains("diced"), run.out());
    }

    @Test
    void streams_are_priced_beside_tubs() {
        String file = Run.write(folder, "hogget.cuts", SHEET);
        List<String> args = List.of(
                "blend",
                file,
                "--lean",
                "exactly 80 % visual",
                "--carcasses",
                "10",
                "--batch",
                "40 kg",
                "--price",
                "diced = 6 a kg",
                "--price",
                "mince = 2 a kg",
                "--tub",
                "bought in = 50 kg, lean 90 % visual, 4.50 a kg");
        String out = Run.of(args.toArray(String[]::new)).out();
        assertTrue(out.contains("It costs 146.67, 3.6667 a kg.\n"), out);
        List<String> without = new ArrayList<>(args);
        without.removeAll(List.of("--price", "mince = 2 a kg", "diced = 6 a kg"));
        assertTrue(Run.of(without.toArray(String[]::new)).err().contains("G1905"), "a price is missing");
        without.addAll(List.of("--price", "sausage = 2 a kg"));
        assertEquals(
                ExitStatus.WRONG_USAGE, Run.of(without.toArray(String[]::new)).status());
    }

    @Test
    void a_blend_for_a_program_is_json() {
        Run run = blend("at least 75 % visual", "--as", "json");
        assertTrue(run.out().startsWith("{\n  \"format\" : \"gambrel blend\",\n  \"version\" : 1,"), run.out());
        assertTrue(run.out().contains("\"kilogramPoints\" : 600.0"), run.out());
        String batch = blend("at least 75 % visual", "--as", "json", "--batch", "100 kg")
                .out();
        assertTrue(batch.contains("\"kilograms\" : 100.0,"), batch);
    }

    @Test
    void the_same_blend_gives_the_same_bytes() {
        Run first = blend("at least 70 % visual", "--batch", "100 kg");
        for (int i = 0; i < 5; i++) {
            assertEquals(first, blend("at least 70 % visual", "--batch", "100 kg"));
        }
    }

    @Test
    void what_is_out_of_reach_is_a_finding() {
        Run run = blend("at least 85 % visual");
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.err().startsWith("error G1902 (target-out-of-reach) at blend\n"), run.err());
        assertEquals("", run.out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    --tub     | 80s 120 kg lean 80 % visual         | “80s 120 kg lean 80 % visual” cannot be read after --tub
                    --tub     | 80s = 120 kg, lean 80 %             | after --tub does not say how lean is judged; write visual
                    --tub     | 80s = 12 kg, lean 80 % ± 2 %, 3 a kg | after --tub does not say how lean is judged; write visual
                    --lean    | at least 80 %                       | after --lean does not say how lean is judged; write visual
                    --lean    | 78 % to 80 %                        | after --lean does not say how lean is judged; write visual
                    --tub     | 80s = 120 cm, lean 80 % visual      | cannot be read after --tub
                    --tub     | 80s = 0 kg, lean 80 % visual        | cannot be read after --tub
                    --tub     | 80s = 9 kg, lean 180 % visual       | cannot be read after --tub
                    --lean    | 80 % visual                         | cannot be read after --lean
                    --lean    | 85 % to 80 % visual                 | write the lower figure first
                    --batch   | much                                | cannot be read after --batch
                    --promise | 100 %                               | cannot be promised
                    --limit   | veal at most 10 kg                  | there is no such tub
                    --limit   | flank less                          | cannot be read after --limit
                    --as      | csv                                 | there are text and json
                    """)
    void what_cannot_be_read_says_how_to_write_it(String option, String words, String told) {
        List<String> args = new ArrayList<>(List.of("blend", "--tub", EIGHTIES, "--tub", FLANK));
        if (!option.equals("--lean")) {
            args.addAll(List.of("--lean", "at least 75 % visual"));
        }
        if (!option.equals("--batch")) {
            args.addAll(List.of("--batch", "10 kg"));
        }
        args.addAll(List.of(option, words));
        Run run = Run.of(args.toArray(String[]::new));
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains(told), run.err());
    }

    @Test
    void a_limit_needs_a_batch_and_a_blend_needs_tubs() {
        assertTrue(blend("at least 75 % visual", "--promise", "95 %").err().contains("write --batch with it"));
        assertTrue(Run.of("blend", "--lean", "at least 75 % visual").err().contains("There is nothing to blend"));
    }
}
