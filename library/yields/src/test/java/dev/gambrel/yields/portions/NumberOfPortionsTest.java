package dev.gambrel.yields.portions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberOfPortionsTest {
    private static final Portioning STEAKS = of(3.6, 0.25, 0.25);

    private static Portioning of(double mean, double sd, double each) {
        return new Portioning(new Estimate(mean, new Spread.Stated(sd)), each);
    }

    private static NumberOfPortions from(long pieces, Portioning one) {
        return new FromSeveral(pieces, 1, 1).of(one, 0);
    }

    /** Chances of the normal distribution, computed for Gambrel by another program. */
    @ParameterizedTest
    @CsvSource({"12, 0.991802464, 0.919243341", "13, 0.919243341, 0.655421742", "14, 0.655421742, 0.274253118"})
    void a_number_has_the_chance_of_it_or_more_less_that_of_more(int number, double atLeast, double more) {
        NumberOfPortions one = STEAKS.number().orElseThrow();
        assertEquals(atLeast, one.chanceOfAtLeast(number), 1e-9);
        assertEquals(atLeast - more, one.chanceOf(number), 1e-9);
        assertEquals(1 - more, one.chanceOfAtMost(number), 1e-9);
    }

    /** The tail sum (Feller, volume 1), computed for Gambrel by another program. */
    @Test
    void its_mean_and_deviation_are_those_of_the_tail_sum() {
        NumberOfPortions one = STEAKS.number().orElseThrow();
        assertEquals(13.900000001, one.expected(), 1e-8);
        assertEquals(1.040832995, one.deviation(), 1e-8);
    }

    /** Six standard deviations out on both sides: P(Z ≥ 6) = P(Z ≤ -6) = 9.865876450376981e-10 (tables). */
    @Test
    void both_tails_are_exact() {
        NumberOfPortions one = of(10, 0.25, 0.5).number().orElseThrow();
        assertEquals(15, one.fewest(), "9 standard deviations below the mean");
        assertEquals(25, one.most());
        assertEquals(1, one.chanceOfAtLeast(23) / 9.865876450376981e-10, 1e-12);
        assertEquals(1, one.chanceOfAtMost(16) / 9.865876450376981e-10, 1e-12);
        NormalDistribution normal = NormalDistribution.of(10, 0.25);
        assertEquals(1, one.chanceOf(16) / normal.probability(8, 8.5), 1e-12);
    }

    /** Ten pieces together by convolution, computed for Gambrel by another program: not 10 × 14, nor 36 kg / 0.25 kg. */
    @Test
    void ten_pieces_give_139_and_134_can_be_promised() {
        NumberOfPortions ten = from(10, STEAKS);
        assertEquals(139.0, ten.expected(), 1e-7);
        assertEquals(0.915037635, ten.chanceOfAtLeast(135), 1e-8);
        assertEquals(0.676330129, ten.chanceOfAtLeast(138), 1e-8);
        assertEquals(0.439401735, ten.chanceOfAtLeast(140), 1e-8);
        assertEquals(134, ten.promised(0.95));
        assertTrue(ten.chanceOfAtLeast(134) >= 0.95 && ten.chanceOfAtLeast(135) < 0.95);
    }

    /**
     * A piece that gives one in half of the cases: forty give as many as heads of forty coins. P(X ≥ 15) = 0.9597, P(X ≥ 16) =
     * 0.9231 (tables of the binomial distribution), and all forty come once in 2^40.
     */
    @Test
    void forty_pieces_that_give_one_or_none_are_binomial() {
        NumberOfPortions forty = from(40, of(1, 0.05, 1));
        assertEquals(0.9597, forty.chanceOfAtLeast(15), 5e-5);
        assertEquals(0.9231, forty.chanceOfAtLeast(16), 5e-5);
        assertEquals(15, forty.promised(0.95));
        assertEquals(1, forty.chanceOfAtLeast(40) * Math.pow(2, 40), 1e-12);
        assertEquals(1, forty.chanceOfAtMost(0) * Math.pow(2, 40), 1e-12);
    }

    /** Five carcasses of two alike pieces stray as five pieces of 2 × N do: √2 as far as ten that vary by themselves. */
    @Test
    void pieces_that_are_alike_do_not_even_out() {
        NumberOfPortions alike = new FromSeveral(10, 2, 1).of(STEAKS, 0);
        assertEquals(139.0, alike.expected(), 1e-7);
        assertEquals(Math.sqrt(2) * from(10, STEAKS).deviation(), alike.deviation(), 1e-9);
        assertEquals(0, alike.chanceOf(139));
        assertEquals(from(5, STEAKS).chanceOfAtLeast(70), alike.chanceOfAtLeast(139), 1e-12);
        assertTrue(alike.promised(0.95) < from(10, STEAKS).promised(0.95));
    }

    @Test
    void pieces_of_a_carcass_that_say_nothing_of_each_other_even_out() {
        NumberOfPortions ten = new FromSeveral(10, 2, 0).of(STEAKS, 0);
        for (int n = 130; n < 145; n++) {
            assertEquals(from(10, STEAKS).chanceOfAtLeast(n), ten.chanceOfAtLeast(n), 1e-14);
        }
    }

    /** What is drawn: P(Z1 ≥ 0 and Z2 ≥ 0) = 1/4 + arcsin(r) / 2π (W. F. Sheppard, 1899). */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.5, 0.9, 0.99, 1})
    void two_pieces_that_are_correlated_give_one_each_as_often_as_both_are_heavy(double correlation) {
        NumberOfPortions pair = new FromSeveral(2, 2, correlation).of(of(1, 0.1, 1), 0);
        assertEquals(0.25 + Math.asin(correlation) / (2 * Math.PI), pair.chanceOfAtLeast(2), 1e-8);
        assertEquals(1, pair.expected(), 1e-9);
    }

    /** Of eleven pieces in pairs one is by itself. */
    @Test
    void an_odd_piece_stands_by_itself() {
        NumberOfPortions eleven = new FromSeveral(11, 2, 1).of(STEAKS, 0);
        double one = 1.040832995;
        assertEquals(11 * 13.9, eleven.expected(), 1e-7);
        assertEquals(one * Math.sqrt(5 * 4 + 1), eleven.deviation(), 1e-7);
    }

    /**
     * The same mean for all, in doubt by 0.05 kg, computed with the nine points of the Gauss-Hermite rule (nodes and weights
     * of M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, table 25.10) by another program.
     */
    @ParameterizedTest
    @CsvSource({"130, 0.9933139111", "134, 0.9239364620", "138, 0.6519353175", "140, 0.4482107006"})
    void a_doubt_that_is_common_to_all_does_not_average_out(int number, double chance) {
        NumberOfPortions ten = new FromSeveral(10, 1, 1).of(STEAKS, 0.05 / 3.6);
        assertEquals(chance, ten.chanceOfAtLeast(number), 1e-8);
        assertEquals(139, ten.expected(), 1e-6);
        double between = 10 * 0.05 / 0.25;
        assertEquals(Math.hypot(from(10, STEAKS).deviation(), between), ten.deviation(), 1e-3);
    }

    /** Where the doubt is large nine points are off by 0.001; by the trapezoidal rule with a step of 0.1, another program. */
    @ParameterizedTest
    @CsvSource({"125, 0.9830262435", "134, 0.7894161190", "140, 0.4708525575", "145, 0.2105838782"})
    void a_large_doubt_is_averaged_over_finely(int number, double chance) {
        assertEquals(chance, new FromSeveral(10, 1, 1).of(STEAKS, 0.15 / 3.6).chanceOfAtLeast(number), 1e-8);
    }

    /** Each piece gives as many, and how many nobody knows: the chance is that of the mean. */
    @Test
    void where_pieces_do_not_stray_all_is_doubt() {
        NumberOfPortions ten = new FromSeveral(10, 1, 1).of(of(3.6, 0, 0.25), 0.25 / 3.6);
        assertEquals(0.919243341, ten.chanceOfAtLeast(130), 1e-3);
        assertEquals(0, ten.chanceOf(131));
    }

    /** Ten thousand pieces and more than are counted out: the normal distribution meets the convolution. */
    @Test
    void what_is_spread_too_widely_is_nearly_normal() {
        Portioning skewed = of(0.5, 0.1, 0.35);
        NumberOfPortions counted = from(100_000, skewed);
        NumberOfPortions normal = new NearlyNormal(counted.expected(), counted.deviation());
        assertTrue(counted instanceof Listed);
        assertTrue(from(100_000_000, skewed) instanceof NearlyNormal);
        for (double certainty : new double[] {0.05, 0.5, 0.95, 0.999}) {
            long number = counted.promised(certainty);
            assertEquals(counted.chanceOfAtLeast(number), normal.chanceOfAtLeast(number), 2e-3);
            assertEquals(number, normal.promised(certainty), 2);
        }
        assertEquals(
                Math.sqrt(1000) * from(100_000, skewed).deviation(),
                from(100_000_000, skewed).deviation(),
                1e-3);
    }

    /** Portions of 0.1 g from a piece that strays by 250 g. */
    @Test
    void crumbs_are_promised_as_well() {
        NumberOfPortions crumbs = of(3.6, 0.25, 0.0001).number().orElseThrow();
        assertTrue(crumbs instanceof NearlyNormal);
        assertEquals(3.6 / 0.0001 - 0.5, crumbs.expected(), 1e-3);
        assertEquals(of(3.6, 0.25, 0.0001).promised(0.95).orElseThrow(), crumbs.promised(0.95), 1);
    }
}
