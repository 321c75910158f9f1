package dev.gambrel.yields.packs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.packs.rule.Certainty;
import dev.gambrel.yields.packs.rule.Directive76211;
import dev.gambrel.yields.packs.rule.Handbook133;
import dev.gambrel.yields.packs.rule.PackRule;
import dev.gambrel.yields.packs.rule.PackTest;
import dev.gambrel.yields.packs.rule.Recommendation87;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchVerdictTest {
    private static BatchVerdict verdict(PackTest test, long batch, String nominal, WeighedPacks packs) {
        return BatchVerdict.of(test, new Batch(batch, Packs.grams(nominal)), packs)
                .orElseThrow();
    }

    private static List<PackRule> broken(BatchVerdict verdict) {
        return verdict.broken().stream().map(RuleResult::rule).toList();
    }

    private static String code(PackTest test, long batch, Quantity nominal, WeighedPacks packs) {
        List<Diagnostic> found =
                BatchVerdict.of(test, new Batch(batch, nominal), packs).diagnostics();
        return found.get(0).code().id();
    }

    /**
     * Guide to the Average Quantity System in Australia, July 2010, Table 3, examples of reference tests. The 750 ml of wine
     * count as 750 g: the table of tolerable deficiencies is the same for both. Light packs are laid between T1 and T2, or
     * under T2, as the table counts them.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            butter,   500,  3500, 125, 501,  2, 480,  ACCEPT
            wine,     750,  130,  50,  752,  1, 719,  REJECT
            sugar,    1500, 5000, 125, 1600, 4, 1460, ACCEPT
            potatoes, 3000, 148,  50,  3100, 1, 2909, REJECT
            """)
    void printed_examples_of_reference_tests(
            String product,
            String nominal,
            long lot,
            int sample,
            String mean,
            int light,
            String weight,
            Answer printed) {
        WeighedPacks packs = Packs.of(sample, mean, light, weight);
        BatchVerdict verdict = verdict(Recommendation87.REFERENCE_TEST, lot, nominal, packs);
        assertEquals(0, new Quantity(packs.mean(), Unit.KILOGRAM).compareTo(Packs.grams(mean)));
        assertEquals(printed, verdict.answer());
        assertEquals(printed == Answer.ACCEPT ? List.of() : List.of(PackRule.SECOND_LIMIT), broken(verdict));
        assertFalse(verdict.restsOnMemory());
    }

    /** The same guide: 500 g of butter have a tolerable deficiency of 15 g, so T1 is 485 g and T2 470 g; 3 kg have 45 g. */
    @Test
    void limits_of_the_printed_examples() {
        BatchVerdict butter = verdict(Recommendation87.REFERENCE_TEST, 3_500, "500", Packs.of(125, "501", 2, "480"));
        assertEquals("485.0 g", butter.tolerance().firstLimit().toString());
        assertEquals("470.0 g", butter.tolerance().secondLimit().toString());
        BatchVerdict potatoes = verdict(Recommendation87.REFERENCE_TEST, 148, "3000", Packs.of(50, "3100", 1, "2909"));
        assertEquals("45 g", potatoes.tolerance().amount().toString());
    }

    /**
     * The packer's own three rules on the same packs: 2 of 125 under T1 are 1.6 %, within 2.5 %; one under T2 is one too many. 4
     * of 125 are 3.2 %: as a batch they would fail, though as a sample they pass.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            500,  125, 501,  2, 480,  ACCEPT
            750,  50,  752,  1, 719,  REJECT
            1500, 125, 1600, 4, 1460, REJECT
            3000, 50,  3100, 1, 2909, REJECT
            """)
    void the_packer_s_three_rules_speak_of_every_pack(
            String nominal, int packs, String mean, int light, String weight, Answer answer) {
        BatchVerdict verdict =
                verdict(Directive76211.PACKERS_RULES, packs, nominal, Packs.of(packs, mean, light, weight));
        assertEquals(answer, verdict.answer());
        assertTrue(verdict.restsOnMemory(), "the 2.5 % are from memory");
    }

    /** Directive 76/211/EEC, Annex II, 2.2.1: for 100 to 500 packs 1 passes and 3 fail, 2 ask for the second sample. */
    @ParameterizedTest
    @CsvSource({"1, ACCEPT", "2, SECOND_SAMPLE", "3, REJECT"})
    void a_first_sample_may_not_settle_it(int light, Answer answer) {
        WeighedPacks packs = Packs.of(30, "204", light, "190");
        assertEquals(
                answer,
                verdict(Directive76211.NOT_DESTRUCTIVE, 300, "200", packs).answer());
    }

    /** The same place: of both samples together 4 pass and 5 fail. No factor is printed for 60 packs. */
    @ParameterizedTest
    @CsvSource({"4, ACCEPT", "5, REJECT"})
    void a_second_sample_settles_it(int light, Answer answer) {
        WeighedPacks both = Packs.of(30, "204", 2, "190").and(Packs.of(30, "204", light - 2, "190"));
        BatchVerdict verdict = verdict(Directive76211.NOT_DESTRUCTIVE, 300, "200", both);
        assertEquals(answer, verdict.answer());
        RuleResult.Mean mean = (RuleResult.Mean) verdict.results().get(0);
        assertEquals(Certainty.WORKED_OUT, mean.citation().certainty());
        // Student's t(0.995; 59) = 2.6618 over the root of 60.
        assertEquals(2.6618 / Math.sqrt(60), mean.factor().value().doubleValue(), 1e-5);
    }

    /** Directive 76/211/EEC, Annex II, 2.2.2: of 20 packs that are opened 1 may be short, 2 fail the batch. */
    @ParameterizedTest
    @CsvSource({"0, ACCEPT", "1, ACCEPT", "2, REJECT"})
    void a_destructive_test_is_settled_at_once(int light, Answer answer) {
        WeighedPacks packs = Packs.of(20, "203", light, "190.9");
        assertEquals(
                answer, verdict(Directive76211.DESTRUCTIVE, 100, "200", packs).answer());
    }

    @Test
    void a_pack_exactly_at_t1_or_t2_is_not_under_it() {
        WeighedPacks packs = Packs.weighing("191.0", "182.00", "190.999999", "0.191e3", "227.001001");
        BatchVerdict verdict = verdict(Directive76211.PACKERS_RULES, 5, "200", packs);
        RuleResult.Count first = (RuleResult.Count) verdict.results().get(1);
        RuleResult.Count second = (RuleResult.Count) verdict.results().get(2);
        assertEquals(2, first.found());
        assertEquals(0, second.found());
        assertEquals(-2, first.margin());
    }

    /** 15 packs 1 g under their mean and 15 packs 1 g over it: s² = 30/29, so the mean may fall short by 0.503 √(30/29) g. */
    @Test
    void the_mean_may_fall_short_by_the_printed_factor_and_no_more() {
        double edge = 200 - 0.503 * Math.sqrt(30 / 29.0);
        assertEquals(Answer.ACCEPT, ofTwoWeights(edge + 1e-9).answer());
        assertEquals(Answer.REJECT, ofTwoWeights(edge - 1e-9).answer());
        RuleResult.Mean mean = (RuleResult.Mean) ofTwoWeights(edge).results().get(0);
        assertEquals(edge, mean.limit().amount().doubleValue(), 1e-9);
        assertEquals(0, mean.margin().amount().doubleValue(), 1e-9);
    }

    private static BatchVerdict ofTwoWeights(double mean) {
        List<Quantity> packs = java.util.stream.IntStream.range(0, 30)
                .mapToObj(i -> Packs.grams(Double.toString(i % 2 == 0 ? mean - 1 : mean + 1)))
                .toList();
        return verdict(Directive76211.NOT_DESTRUCTIVE, 300, "200", new WeighedPacks(packs));
    }

    /** Directive 76/211/EEC, Annex II, 2.1.3; SI 2006/659, Schedule 2, 4.7: all packs, and the mean as it is. */
    @Test
    void the_mean_of_a_small_batch_counts_as_it_is() {
        WeighedPacks packs = Packs.weighing("199.9", "200.1", "199.9");
        BatchVerdict verdict = verdict(Directive76211.NOT_DESTRUCTIVE, 3, "200", packs);
        assertEquals(List.of(PackRule.MEAN), broken(verdict));
        assertEquals(
                Answer.ACCEPT,
                verdict(Directive76211.NOT_DESTRUCTIVE, 3, "200", Packs.weighing("199.9", "200.1", "200"))
                        .answer());
        assertEquals(
                Answer.ACCEPT,
                verdict(Directive76211.NOT_DESTRUCTIVE, 1, "200", Packs.weighing("200"))
                        .answer());
        assertEquals(
                Answer.REJECT,
                verdict(Directive76211.NOT_DESTRUCTIVE, 1, "200", Packs.weighing("199.99"))
                        .answer());
    }

    /** NIST Handbook 133, from memory: one limit for each pack, none of 12 may lack more. 200 g lack at most 28.3 g. */
    @Test
    void the_handbook_knows_no_second_limit() {
        BatchVerdict verdict = verdict(Handbook133.CATEGORY_A, 200, "200", Packs.of(12, "201", 1, "171.6"));
        assertEquals(List.of(PackRule.FIRST_LIMIT), broken(verdict));
        assertEquals(2, verdict.results().size());
        assertTrue(verdict.restsOnMemory());
    }

    @Test
    void what_a_test_does_not_cover_is_said_and_not_judged() {
        WeighedPacks thirty = Packs.of(30, "204", 0, "190");
        PackTest directive = Directive76211.NOT_DESTRUCTIVE;
        assertEquals("G1801", code(directive, 300, Quantity.of("12", Unit.KILOGRAM), thirty));
        assertEquals("G1802", code(Directive76211.DESTRUCTIVE, 99, Packs.grams("200"), thirty));
        assertEquals("G1803", code(directive, 501, Packs.grams("200"), thirty));
        assertEquals("G1803", code(directive, 99, Packs.grams("200"), thirty));
        String message = BatchVerdict.of(directive, new Batch(501, Packs.grams("200")), thirty)
                .diagnostics()
                .get(0)
                .message();
        assertEquals(
                "Of a batch of 501 packs the plan takes 50, or with a second sample 100; weighed were 30.", message);
    }

    /** Directive 76/211/EEC, Annex II, 2.1.2: 10,000 packs, save at the end of the line, where it is the output of an hour. */
    @Test
    void a_batch_of_more_than_ten_thousand_is_judged_with_a_warning() {
        WeighedPacks packs = Packs.of(80, "204", 0, "190");
        assertEquals("G1808", code(Directive76211.NOT_DESTRUCTIVE, 10_001, Packs.grams("200"), packs));
        assertEquals(
                Answer.ACCEPT,
                verdict(Directive76211.NOT_DESTRUCTIVE, 10_001, "200", packs).answer());
        assertTrue(BatchVerdict.of(Directive76211.NOT_DESTRUCTIVE, new Batch(10_000, Packs.grams("200")), packs)
                .diagnostics()
                .isEmpty());
    }

    @Test
    void a_pack_weighs_more_than_nothing() {
        assertThrows(IllegalArgumentException.class, () -> Packs.weighing());
        assertThrows(IllegalArgumentException.class, () -> Packs.weighing("200", "0"));
        assertFalse(WeighedPacks.isAcceptable(Quantity.of("20", Unit.MILLIMETRE)));
        assertFalse(WeighedPacks.isAcceptable(Quantity.of("1e9000", Unit.GRAM)));
        assertFalse(WeighedPacks.isAcceptable(Quantity.of("1e-9000", Unit.GRAM)));
        assertThrows(IllegalArgumentException.class, () -> new Batch(0, Packs.grams("200")));
        assertThrows(IllegalArgumentException.class, () -> new Batch(10, Packs.grams("0")));
    }

    /** 2 ± 1 three times: n − 1 below the squares gives 1 g, n would give 0.816 g. */
    @Test
    void the_spread_has_one_less_than_n_below() {
        WeighedPacks packs = Packs.weighing("1", "2", "3");
        assertEquals(0.001, packs.deviation().orElseThrow().doubleValue(), 1e-18);
        assertTrue(Packs.weighing("1").deviation().isEmpty());
    }
}
