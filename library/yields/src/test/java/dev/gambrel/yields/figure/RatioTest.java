package dev.gambrel.yields.figure;

import static dev.gambrel.yields.Sheet.sd;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** A cost of about 120 over a weight of about 8 kg, the two varying together. */
class RatioTest {
    private static final int DRAWS = 400_000;

    private static Ratio ratio(double sdOfCost, double sdOfWeight, double correlation) {
        double covariance = correlation * sdOfCost * sdOfWeight;
        return JointEstimate.of(new double[] {120, 8}, new double[][] {
                    {sdOfCost * sdOfCost, covariance}, {covariance, sdOfWeight * sdOfWeight}
                })
                .ratio(0, 1);
    }

    /** By hand: cv 0.05 and 0.04, correlation 0.5: 15 (1 + 0.0016 − 0.0010), and cv² = 0.0025 + 0.0016 − 0.0020. */
    @Test
    void its_mean_lies_over_the_ratio_of_the_means_and_its_spread_under_that_of_independent_figures() {
        Estimate ratio = ratio(6, 0.32, 0.5).estimate();
        assertEquals(15 * 1.0006, ratio.mean(), 1e-12);
        assertEquals(15 * Math.sqrt(0.0021), sd(ratio), 1e-12);
    }

    @Test
    void a_fixed_weight_only_divides() {
        Ratio ratio = ratio(6, 0, 0);
        assertEquals(15, ratio.estimate().mean());
        assertEquals(0.75, sd(ratio.estimate()), 1e-15);
        assertEquals(
                15 + 1.959963984540054 * 0.75, ratio.range95().orElseThrow().high(), 1e-12);
    }

    @Test
    void what_rises_and_falls_with_the_weight_has_a_ratio_that_does_not_vary() {
        Ratio ratio = ratio(12, 0.8, 1);
        assertEquals(15, ratio.estimate().mean(), 1e-12);
        assertEquals(0, sd(ratio.estimate()), 1e-6);
        assertEquals(15, ratio.range95().orElseThrow().low(), 1e-6);
    }

    /**
     * Fieller's range in figures, worked by hand from the roots of (U − θW)² = z² (σ²_U − 2θ σ_UW + θ² σ²_W): U 120 ± 6, W 8 ±
     * 1.6 (a coefficient of variation of 0.2), correlation 0.
     */
    @Test
    void with_a_weight_that_strays_far_the_range_is_not_even_about_the_mean() {
        double z2 = Math.pow(1.959963984540054, 2);
        double a = 64 - z2 * 2.56;
        double c = 14_400 - z2 * 36;
        double root = Math.sqrt(960 * 960 - a * c);
        Interval range = ratio(6, 1.6, 0).range95().orElseThrow();
        assertEquals((960 - root) / a, range.low(), 1e-9);
        assertEquals((960 + root) / a, range.high(), 1e-9);
        assertTrue(range.high() - 15 > 2 * (15 - range.low()));
    }

    @Test
    void a_weight_that_may_be_nothing_leaves_a_ratio_without_end() {
        assertTrue(ratio(6, 4.1, 0).range95().isEmpty());
        assertTrue(ratio(6, 4.0, 0).range95().isPresent());
    }

    @Test
    void without_a_spread_there_is_the_ratio_of_the_means_alone() {
        Ratio ratio = ratio(6, Double.NaN, 0);
        assertEquals(new Estimate(15, Spread.NOT_STATED), ratio.estimate());
        assertTrue(ratio.range95().isEmpty());
    }

    @Test
    void nothing_is_divided_by_nothing() {
        JointEstimate two = JointEstimate.of(new double[] {1, 0}, new double[2][2]);
        assertThrows(IllegalArgumentException.class, () -> two.ratio(0, 1));
    }

    /** Draws of two normal figures with a coefficient of variation of 0.15 in the weight, as JCGM 101 propagates them. */
    @Test
    void mean_spread_and_range_agree_with_draws() {
        Ratio exact = ratio(18, 1.2, 0.6);
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20_260_102L);
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        double[] drawn = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double weight = normal.sample();
            double cost = 0.6 * weight + 0.8 * normal.sample();
            drawn[i] = (120 + 18 * cost) / (8 + 1.2 * weight);
        }
        Arrays.sort(drawn);
        Interval range = exact.range95().orElseThrow();
        double spread = sd(exact.estimate());
        double ofQuantile = 4 * spread * Math.sqrt(0.025 * 0.975 / DRAWS) / 0.0584;
        assertEquals(drawn[DRAWS / 40], range.low(), ofQuantile);
        assertEquals(drawn[DRAWS - DRAWS / 40], range.high(), 2 * ofQuantile);
        double mean = Arrays.stream(drawn).sum() / DRAWS;
        assertEquals(mean, exact.estimate().mean(), 0.01);
        assertTrue(Math.abs(mean - exact.estimate().mean()) < Math.abs(mean - 15) / 10);
    }
}
