package dev.gambrel.yields.lean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Spread;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Ratios against draws of two normal figures (JCGM 101, propagation of distributions by Monte Carlo). */
class RatioTest {
    private static final int DRAWS = 400_000;

    /** Lean weight 7 of 10 kg, as Σ of two sources of 80 % and 50 %; the weights stray by so much. */
    private static double[] draws(double sdOne, double sdOther) {
        Random random = new Random(20_260_101);
        double[] drawn = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double one = 20 + sdOne * random.nextGaussian();
            double other = 10 + sdOther * random.nextGaussian();
            drawn[i] = (80 * one + 50 * other) / (one + other);
        }
        return drawn;
    }

    private static Ratio ratio(double sdOne, double sdOther) {
        double one = sdOne * sdOne;
        double other = sdOther * sdOther;
        return new Ratio(70, (100 * one + 400 * other) / 900, (10 * one - 20 * other) / 900, (one + other) / 900);
    }

    @Test
    void mean_and_spread_of_a_steady_ratio_agree_with_draws() {
        double[] drawn = draws(0.8, 0.5);
        double mean = Arrays.stream(drawn).average().orElseThrow();
        double sd =
                Math.sqrt(Arrays.stream(drawn).map(x -> (x - mean) * (x - mean)).sum() / DRAWS);
        double ours = ((Spread.Stated) ratio(0.8, 0.5).estimate().spread()).standardDeviation();
        assertEquals(mean, ratio(0.8, 0.5).estimate().mean(), 4 * sd / Math.sqrt(DRAWS));
        assertEquals(1, ours / sd, 4 / Math.sqrt(2.0 * DRAWS));
    }

    /** 40 kg of 100 stray: the range is Fieller's, and a tail of 2.5 % lies beyond each end, told to 4 √(pq / N). */
    @Test
    void the_range_of_an_unsteady_ratio_holds_95_in_100_draws() {
        double[] drawn = draws(4, 3);
        Interval range = ratio(4, 3).range95().orElseThrow();
        double below = Arrays.stream(drawn).filter(x -> x < range.low()).count() / (double) DRAWS;
        double above = Arrays.stream(drawn).filter(x -> x > range.high()).count() / (double) DRAWS;
        double near = 4 * Math.sqrt(0.025 * 0.975 / DRAWS);
        assertEquals(0.025, below, near);
        assertEquals(0.025, above, near);
    }

    @Test
    void a_weight_that_may_be_nothing_gives_no_range() {
        assertTrue(ratio(14, 9).range95().isEmpty());
    }

    @Test
    void a_spread_that_is_not_stated_leaves_the_ratio_of_the_means() {
        Ratio ratio = new Ratio(70, Double.NaN, Double.NaN, Double.NaN);
        assertEquals(70, ratio.estimate().mean());
        assertEquals(Spread.NOT_STATED, ratio.estimate().spread());
        assertTrue(ratio.range95().isEmpty());
    }
}
