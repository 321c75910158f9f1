package dev.gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.yields.packs.BatchVerdict;
import dev.gambrel.yields.packs.PackCode;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Packs of 200 g have a tolerable negative error of 9 g: directive 76/211/EEC, Annex I, 2.4. */
class PacksVerbTest {
    @TempDir
    Path folder;

    /** So many packs of 206 g or 200 g by turns, after those given. */
    private static String weights(int packs, String... first) {
        return Stream.concat(
                        Stream.of(first), Stream.iterate(0, i -> i + 1).map(i -> i % 2 == 0 ? "206.0 g" : "200.0 g"))
                .limit(packs)
                .collect(Collectors.joining("\n", "// net weights\n", "\n"));
    }

    private Run run(String written, String... more) {
        List<String> args = new ArrayList<>(List.of("packs", Run.write(folder, "weights.txt", written)));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private Run batchOf600(String written) {
        return run(written, "--nominal", "200 g", "--batch", "600");
    }

    @Test
    void each_rule_is_told_with_its_figure_its_limit_and_what_is_between() {
        Run run = batchOf600(weights(50, "190.9 g"));
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertEquals("", run.err());
        // The mean is (190.9 + 25 × 206 + 24 × 200) / 50 = 202.818; the limit is 200 − 0.379 × 3.46.
        assertTrue(run.out().startsWith("""
                Packs of 200 g, 50 weighed of a batch of 600
                Judged by directive 76/211/EEC
                A pack may lack 9.0 g. T1, so much under the label, is 191.0 g; T2, twice as much under it, is 182.0 g

                """), run.out());
        assertTrue(run.out().contains("mean weight     202.82 g  at least 198.69 g  4.13 g over"), run.out());
        assertTrue(
                run.out().contains("packs under T1  1         at most 2; 5 fail  1 more might be     kept"), run.out());
        assertTrue(
                run.out().contains("packs under T2  0         none               none more might be  kept"), run.out());
        assertTrue(run.out().contains("\nBy these rules the batch is accepted.\n"), run.out());
        assertTrue(run.out().contains("  Directive 76/211/EEC, Annex II, 2.2.1, "), run.out());
        assertTrue(run.out().endsWith(BatchVerdict.CAUTION + "\n"), run.out());
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            190.9 g;190.9 g;190.9 g, Not settled: draw and weigh 50 more
            190.9 g;190.9 g;190.9 g;190.9 g;190.9 g, not accepted: too many packs are under T1.
            181.9 g, not accepted: a pack is under T2.
            """)
    void what_is_not_accepted_or_not_settled_ends_with_1(String light, String told) {
        Run run = batchOf600(weights(50, light.split(";")));
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.out().contains(told), run.out());
    }

    @Test
    void a_batch_too_light_on_average_is_told_so() {
        Run run = batchOf600(weights(50).replace("206.0", "196.0"));
        assertTrue(
                run.out().contains("not accepted: the packs are too light on average.\nHold it back; what may be done"),
                run.out());
        assertTrue(run.out().contains(" 1.23 g short "), run.out());
    }

    /** 2.5 % of 600 packs are 15; the first sample of 50 and the second pass as the plan says. */
    @Test
    void how_often_such_a_test_passes_a_batch_is_told() {
        Run run = batchOf600(weights(50));
        assertTrue(run.out().contains("  15 of 600: "), run.out());
        assertTrue(run.out().contains("  60 of 600: "), run.out());
    }

    @Test
    void the_tare_is_taken_off_and_the_unit_may_be_said_once() {
        String bare = weights(50).replace(" g", "");
        Run net = run(bare, "--unit", "g", "--nominal", "200 g", "--batch", "600");
        assertEquals(batchOf600(weights(50)), net);
        String gross = bare.replace("206.0", "218.5").replace("200.0", "212.5");
        Run tared = run(gross, "--unit", "g", "--tare", "12.5 g", "--nominal", "200 g", "--batch", "600");
        assertEquals(net.out(), tared.out());
    }

    @Test
    void figures_without_a_unit_are_told_once_for_all() {
        Run run = batchOf600(weights(50).replace(" g", ""));
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals(1, run.err().split("G1805", -1).length - 1, run.err());
        assertTrue(run.err().contains("  Weights without a unit: 50.\n"), run.err());
        assertTrue(
                run.err().contains("→ Say the unit of all, such as --unit g; or write it after each figure."),
                run.err());
    }

    @Test
    void a_file_of_weights_that_is_not_there_is_no_specification() {
        Run run = Run.of("packs", "weighed.txt", "--nominal", "200 g", "--batch", "600");
        assertEquals(ExitStatus.COULD_NOT, run.status());
        assertTrue(run.err().startsWith("There is no file “weighed.txt” here.\n→ Look at how"), run.err());
    }

    @Test
    void weights_are_taken_from_the_line_or_from_what_is_handed_over() {
        String[] packer = {"packs", "--test", "packer", "--nominal", "200 g", "--weights", "201.4 g, 199.8 g; 200 g"};
        Run line = Run.of(packer);
        assertEquals(ExitStatus.FINE, line.status(), line.err());
        assertTrue(
                line.out().startsWith("Packs of 200 g, all 3 weighed\nJudged by the packer's three rules\n"),
                line.out());
        assertTrue(line.out().contains("What is from memory must be looked up"), line.out());
        Run handed = Run.reading("201.4 g\n199.8 g\n200 g\n", "packs", "-", "--test", "packer", "--nominal", "200 g");
        assertEquals(line.out(), handed.out());
    }

    @Test
    void the_verdict_as_json_has_exact_figures_and_sources() {
        Run run = run(weights(50, "190.9 g"), "--nominal", "200 g", "--batch", "600", "--as", "json");
        Map<?, ?> json = (Map<?, ?>) Json.parse(run.out());
        assertEquals("gambrel verdict on packs", json.get("format"));
        assertEquals("accept", json.get("answer"));
        assertEquals(new BigDecimal("191"), json.get("t1"));
        List<?> rules = (List<?>) json.get("rules");
        Map<?, ?> mean = (Map<?, ?>) rules.get(0);
        assertEquals(new BigDecimal("202.818"), mean.get("found"));
        assertEquals(new BigDecimal("0.379"), mean.get("factor"));
        assertEquals(BigDecimal.ONE, ((Map<?, ?>) rules.get(1)).get("found"));
        assertEquals(3, ((List<?>) json.get("sources")).size() - 1);
        assertEquals(false, json.get("restsOnMemory"));
        assertEquals(BatchVerdict.CAUTION, json.get("caution"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"eu", "uk", "oiml", "nist", "eu opened", "UK opened"})
    void every_test_has_its_word_and_its_own_sample(String test) {
        Map<String, Integer> samples =
                Map.of("eu", 30, "uk", 30, "oiml", 50, "nist", 24, "eu opened", 20, "UK opened", 20);
        Run run = run(weights(samples.get(test)), "--nominal", "200 g", "--batch", "300", "--test", test);
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertEquals(test.equals("nist"), run.out().contains("must be looked up"), run.out());
    }

    @Test
    void a_slip_of_a_file_is_underlined_and_told() {
        Run run = run("201.4 g\n201,4 g\n", "--nominal", "200 g", "--test", "packer");
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().contains("error G1805 (not-a-pack-weight) in "), run.err());
        assertTrue(run.err().contains("line 2"), run.err());
        assertTrue(run.err().contains("“201,4 g” is not the weight of a pack."), run.err());
        assertFalse(run.err().contains("line 1,"), run.err());
    }

    /** What is hostile or merely wrong in a file, each with the number of its finding. */
    private enum Slip {
        BEYOND_THE_TABLE("G1801", "200 g", "--nominal", "12 kg", "--batch", "300"),
        NOT_COVERED("G1802", "200 g", "--nominal", "200 g", "--batch", "99", "--test", "eu opened"),
        ANOTHER_NUMBER("G1803", "200 g", "--nominal", "200 g", "--batch", "600"),
        MORE_THAN_THERE_ARE("G1803", "200 g\n200 g", "--nominal", "200 g", "--batch", "1"),
        ALL_TARE("G1804", "12 g", "--nominal", "200 g", "--tare", "12 g"),
        NOTHING("G1805", "0 g", "--nominal", "200 g"),
        TOO_HEAVY("G1805", "9999999999999999 kg", "--nominal", "200 g"),
        NO_UNIT("G1805", "200", "--nominal", "200 g"),
        LENGTH("G1805", "200 mm", "--nominal", "200 g"),
        LESS_THAN_NOTHING("G1805", "-200 g", "--nominal", "200 g"),
        POWER("G1805", "2e2 g", "--nominal", "200 g"),
        OTHER_DIGITS("G1805", "٢٠٠ g", "--nominal", "200 g"),
        TOO_LONG("G1805", "200.00000000000000000000000000000000001 g", "--nominal", "200 g"),
        STEERING("G1805", "\u001b[31m200 g", "--nominal", "200 g"),
        OUNCES_FOR_GRAMS("G1806", "7.1 g", "--nominal", "200 g"),
        EMPTY("G1807", "", "--nominal", "200 g"),
        COMMENT_ALONE("G1807", "// Tuesday\n\n;;\n", "--nominal", "200 g");

        private final String code;
        private final String written;
        private final String[] more;

        Slip(String code, String written, String... more) {
            this.code = code;
            this.written = written;
            this.more = more;
        }
    }

    @ParameterizedTest
    @org.junit.jupiter.params.provider.EnumSource(Slip.class)
    void a_slip_is_found_and_nothing_is_guessed(Slip slip) {
        List<String> more = new ArrayList<>(List.of(slip.more));
        if (!more.contains("--batch")) {
            more.addAll(List.of("--test", "packer"));
        }
        Run run = run(slip.written, more.toArray(String[]::new));
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.err().contains(" " + slip.code + " "), run.err());
        assertFalse(run.err().contains("\u001b"), run.err());
        assertEquals(slip == Slip.OUNCES_FOR_GRAMS, !run.out().isEmpty(), run.out());
    }

    @Test
    void every_kind_of_finding_has_a_slip() {
        Set<String> covered = new TreeSet<>();
        Stream.of(Slip.values()).forEach(slip -> covered.add(slip.code));
        covered.add("G1808");
        Set<String> wanted = new TreeSet<>();
        Stream.of(PackCode.values()).forEach(code -> wanted.add(code.id()));
        assertEquals(wanted, covered);
    }

    @Test
    void a_batch_larger_than_the_directive_takes_is_judged_with_a_warning() {
        Run run = run(weights(80), "--nominal", "200 g", "--batch", "12000");
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.err().startsWith("warning G1808 "), run.err());
        assertTrue(run.out().contains("By these rules the batch is accepted."), run.out());
    }

    @Test
    void a_weight_in_another_unit_is_asked_about_once() {
        Run run = run("7.1 g\n7.0 g\n200 g\n", "--nominal", "200 g", "--test", "packer");
        assertTrue(run.err().contains("A pack weighs 7.1 g net, and the packs say 200 g. Was it 7.1 oz?"), run.err());
        assertTrue(run.err().contains("Packs so far off: 2."), run.err());
        assertEquals(run.err().indexOf("G1806"), run.err().lastIndexOf("G1806"));
    }

    @Test
    void a_file_of_nonsense_is_told_of_in_few_words() {
        Run lines = run("x\n".repeat(100_000), "--nominal", "200 g", "--batch", "600");
        assertTrue(lines.err().length() < 30_000, lines.err());
        Run line = run("1,".repeat(100_000), "--nominal", "200 g", "--batch", "600");
        assertTrue(line.err().length() < 2_000, line.err());
        assertEquals(ExitStatus.FINDINGS, line.status());
    }

    @Test
    void a_file_that_is_not_there_could_not_be_read() {
        Run run = Run.of("packs", folder.resolve("none.txt").toString(), "--nominal", "200 g", "--batch", "600");
        assertEquals(ExitStatus.COULD_NOT, run.status());
        Run folderItself = Run.of("packs", folder.toString(), "--nominal", "200 g", "--batch", "600");
        assertEquals(ExitStatus.COULD_NOT, folderItself.status());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --nominal|200
            --nominal|0 g
            --nominal|200 mm
            --nominal|200,5 g
            --nominal|9999999999999999999 kg
            --batch|0
            --batch|-3
            --batch|many
            --batch|99999999999999
            --tare|12
            --unit|mm
            --unit|stone
            --test|us
            --as|csv
            """)
    void what_is_no_such_value_is_wrong_usage(String option, String value) {
        List<String> args = new ArrayList<>(List.of("packs", "--weights", "200 g", option + "=" + value));
        if (!option.equals("--nominal")) {
            args.add("--nominal=200 g");
        }
        if (!option.equals("--batch")) {
            args.add("--batch=600");
        }
        Run run = Run.of(args.toArray(String[]::new));
        assertEquals(ExitStatus.WRONG_USAGE, run.status(), run.err());
        assertEquals("", run.out());
    }

    @Test
    void weights_stand_in_one_place_and_label_and_batch_are_told() {
        assertWrong("packs", "--nominal", "200 g", "--batch", "600");
        assertWrong("packs", "a.txt", "--weights", "200 g", "--nominal", "200 g", "--batch", "600");
        assertWrong("packs", "--weights", "200 g", "--batch", "600");
        assertWrong("packs", "--weights", "200 g", "--nominal", "200 g");
    }

    private static void assertWrong(String... args) {
        assertEquals(ExitStatus.WRONG_USAGE, Run.of(args).status());
    }
}
