package dev.gambrel.yields.portions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TruncatedNormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TruncatedNormalTest {
    private static TruncatedNormal of(double mean) {
        return new TruncatedNormal(0, mean, 1);
    }

    /** Mean 2 and standard deviation 1 cut off at 0: the formulas of Johnson, Kotz and Balakrishnan, by another program. */
    @Test
    void what_is_kept_is_larger_and_strays_less() {
        assertEquals(2.05524786, of(2).keptMean(), 1e-8);
        assertEquals(0.94151577, of(2).keptDeviation(), 1e-8);
    }

    /** Apache Commons Statistics has the moments by another way, as far out as its distribution can be made. */
    @ParameterizedTest
    @ValueSource(doubles = {5, 2, 1, 0, -1, -2.9, -3, -3.1, -5, -12, -20})
    void the_moments_are_those_of_another_library(double mean) {
        TruncatedNormalDistribution other = TruncatedNormalDistribution.of(mean, 1, 0, Double.POSITIVE_INFINITY);
        assertEquals(1, of(mean).keptMean() / other.getMean(), 2e-11);
        assertEquals(1, of(mean).keptDeviation() / Math.sqrt(other.getVariance()), 2e-11);
        double size = 2 * other.getMean();
        assertEquals(1, of(mean).atLeast(size) / other.survivalProbability(size), 1e-11);
        assertEquals(1, of(mean).between(0, size) / other.cumulativeProbability(size), 1e-11);
    }

    /** Far out it is the exponential distribution of mean σ² / |μ|: 1 - 1/α² + … of it (NIST DLMF 7.12). */
    @ParameterizedTest
    @ValueSource(doubles = {-1e3, -1e6, -1e9})
    void far_out_it_is_exponential(double mean) {
        double exponential = 1 / -mean;
        double nearly = 3 * exponential * exponential;
        assertEquals(1, of(mean).keptMean() / exponential, nearly + 1e-15);
        assertEquals(1, of(mean).keptDeviation() / exponential, nearly + 1e-15);
        assertEquals(Math.exp(-1), of(mean).atLeast(exponential), nearly + 1e-15);
        assertEquals(Math.exp(-1) - Math.exp(-2), of(mean).between(exponential, 2 * exponential), nearly + 1e-15);
    }

    /** P(Z ≥ 10) = 7.619853024160527e-24 and P(Z ≤ -10) the same (standard tables of the normal distribution). */
    @Test
    void a_small_chance_is_as_exact_as_a_large_one() {
        TruncatedNormal whole = new TruncatedNormal(Double.NEGATIVE_INFINITY, 20, 1);
        assertEquals(1, whole.atLeast(30) / 7.619853024160527e-24, 1e-12);
        assertEquals(1, whole.between(Double.NEGATIVE_INFINITY, 10) / 7.619853024160527e-24, 1e-12);
        NormalDistribution normal = NormalDistribution.of(20, 1);
        assertEquals(1, whole.between(29, 30) / normal.probability(29, 30), 1e-12);
    }
}
