package dev.gambrel.yields.packs.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.packs.rule.Directive76211;
import dev.gambrel.yields.packs.rule.SamplingStage;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceOfPassingTest {
    /** NIST/SEMATECH e-Handbook, 6.2.3, plan of 52 packs that takes 3: prints .998 .980 .930 .739 .394; from memory. */
    @ParameterizedTest
    @CsvSource({
        "0.01, 0.998153, .998",
        "0.02, 0.979765, .980",
        "0.03, 0.929537, .930",
        "0.05, 0.738317, .739",
        "0.08, 0.393763, .394"
    })
    void curve_of_a_plan_of_52(double share, double computed, double printed) {
        double chance = ChanceOfPassing.single(52, 3).inLargeBatch(share);
        assertEquals(computed, chance, 1e-6);
        assertEquals(printed, chance, 1e-3);
    }

    /** The destructive plan of directive 76/211/EEC, Annex II, 2.2.2; chances computed as binomial sums. */
    @ParameterizedTest
    @CsvSource({"0.025, 0.911758", "0.05, 0.735840", "0.10, 0.391747"})
    void a_destructive_test_lets_many_short_packs_through(double share, double chance) {
        var plan = new ChanceOfPassing(
                Directive76211.DESTRUCTIVE.plan(1_000).orElseThrow().stages());
        assertEquals(chance, plan.inLargeBatch(share), 1e-6);
    }

    /** The same plan on 5 short packs of 100: without putting back 0.7395, with 0.7358. Hypergeometric by hand. */
    @Test
    void a_small_batch_has_its_own_curve() {
        double all = choose(100, 20).doubleValue();
        double none = choose(95, 20).doubleValue() / all;
        double one = 5 * choose(95, 19).doubleValue() / all;
        assertEquals(none + one, ChanceOfPassing.single(20, 1).inBatchOf(100, 5), 1e-12);
        assertEquals(0.7395, ChanceOfPassing.single(20, 1).inBatchOf(100, 5), 1e-4);
        assertEquals(0.7358, ChanceOfPassing.single(20, 1).inLargeBatch(0.05), 1e-4);
    }

    /** D. C. Montgomery, Introduction to Statistical Quality Control, 15.2: 89 packs, 2 taken, 1 % short; 0.9397, from memory. */
    @Test
    void curve_of_a_plan_of_89() {
        assertEquals(0.9397, ChanceOfPassing.single(89, 2).inLargeBatch(0.01), 5e-5);
    }

    /** Directive 76/211/EEC, Annex II, 2.2.1, for 100 to 500 packs, added up with exact fractions. */
    @ParameterizedTest
    @CsvSource({"300, 6", "300, 15", "100, 3", "500, 60"})
    void double_sampling_of_a_small_batch_agrees_with_exact_fractions(int batch, int shortOnes) {
        BigInteger passing = BigInteger.ZERO;
        for (int d = 0; d <= 1; d++) {
            passing = passing.add(ways(batch, shortOnes, 30, d).multiply(choose(batch - 30, 30)));
        }
        for (int e = 0; e <= 2; e++) {
            passing = passing.add(ways(batch, shortOnes, 30, 2).multiply(ways(batch - 30, shortOnes - 2, 30, e)));
        }
        BigDecimal all = new BigDecimal(choose(batch, 30).multiply(choose(batch - 30, 30)));
        double exact =
                new BigDecimal(passing).divide(all, MathContext.DECIMAL128).doubleValue();
        assertEquals(exact, doubled().inBatchOf(batch, shortOnes), 1e-12 * Math.max(exact, 1e-3));
    }

    /** At 60 % short hardly any batch passes: 0.4³⁰ + 30 × 0.6 × 0.4²⁹ is 5.3e-11, and it is not lost to rounding. */
    @Test
    void a_chance_far_out_in_the_tail_keeps_its_digits() {
        double none = Math.pow(0.4, 30);
        double one = 30 * 0.6 * Math.pow(0.4, 29);
        assertEquals(none + one, ChanceOfPassing.single(30, 1).inLargeBatch(0.6), 1e-10 * one);
        assertEquals(1, doubled().inLargeBatch(0));
        assertEquals(0, doubled().inLargeBatch(1));
    }

    @Test
    void only_single_and_double_sampling_is_known() {
        SamplingStage stage = new SamplingStage(30, 1, 3);
        assertThrows(IllegalArgumentException.class, () -> new ChanceOfPassing(List.of()));
        assertThrows(IllegalArgumentException.class, () -> new ChanceOfPassing(List.of(stage, stage)));
        assertThrows(IllegalArgumentException.class, () -> new SamplingStage(30, 3, 3));
    }

    @Property
    void the_more_are_short_the_less_likely_a_batch_passes(
            @ForAll @DoubleRange(max = 1) double share, @ForAll @DoubleRange(max = 1) double more) {
        double worse = share + (1 - share) * more;
        assertTrue(doubled().inLargeBatch(worse) <= doubled().inLargeBatch(share) + 1e-12);
        ChanceOfPassing single = ChanceOfPassing.single(20, 1);
        assertTrue(single.inLargeBatch(worse) <= single.inLargeBatch(share) + 1e-12);
    }

    @Property
    void one_more_short_pack_never_helps(
            @ForAll @IntRange(min = 60, max = 500) int batch, @ForAll @IntRange(max = 60) int shortOnes) {
        double before = doubled().inBatchOf(batch, Math.min(shortOnes, batch - 1));
        double after = doubled().inBatchOf(batch, Math.min(shortOnes, batch - 1) + 1);
        assertTrue(after <= before + 1e-12, before + " to " + after);
    }

    private static ChanceOfPassing doubled() {
        return new ChanceOfPassing(
                Directive76211.NOT_DESTRUCTIVE.plan(300).orElseThrow().stages());
    }

    private static BigInteger ways(int batch, int shortOnes, int drawn, int found) {
        return choose(shortOnes, found).multiply(choose(batch - shortOnes, drawn - found));
    }

    private static BigInteger choose(int n, int k) {
        BigInteger ways = BigInteger.ONE;
        for (int i = 0; i < k; i++) {
            ways = ways.multiply(BigInteger.valueOf(n - i)).divide(BigInteger.valueOf(i + 1L));
        }
        return n < k ? BigInteger.ZERO : ways;
    }
}
