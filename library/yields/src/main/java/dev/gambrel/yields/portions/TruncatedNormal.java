package dev.gambrel.yields.portions;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A normal distribution of which only what is not under a bound is kept, in both tails as exact as the functions it is made
 * of: no chance is taken as 1 less another.
 *
 * <p>With α the bound in standard deviations from the mean and λ = φ(α) / (1 − Φ(α)), its mean is μ + σλ and its variance
 * σ² (1 − λ(λ − α)) (N. L. Johnson, S. Kotz, N. Balakrishnan, Continuous Univariate Distributions, volume 1, chapter 13).
 * Where α is large these are differences of almost equal numbers; there they come from the continued fraction 1 / λ =
 * 1 / (α + 1 / (α + 2 / (α + 3 / (α + …)))), in which nothing cancels (NIST Digital Library of Mathematical Functions, 7.9).
 *
 * @param least the bound; minus infinity for the whole normal distribution
 * @param mean of the normal distribution, before anything is cut off
 * @param deviation its standard deviation, more than 0
 */
record TruncatedNormal(double least, double mean, double deviation) {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    /** From here on the continued fraction is exact within {@link #TERMS}. */
    private static final double FAR = 3;

    private static final int TERMS = 80;

    /** The chance of so much or more. */
    double atLeast(double size) {
        if (size <= least) {
            return 1;
        }
        double a = standard(least);
        return a < FAR
                ? STANDARD.survivalProbability(standard(size)) / STANDARD.survivalProbability(a)
                : Math.exp(logRatio(a, (size - least) / deviation));
    }

    /** The chance of {@code from} or more, and less than {@code to}. */
    double between(double from, double to) {
        double low = Math.max(from, least);
        double high = Math.max(to, least);
        if (!(low < high)) {
            return 0;
        }
        double a = standard(least);
        if (a < FAR) {
            return STANDARD.probability(standard(low), standard(high)) / STANDARD.survivalProbability(a);
        }
        return atLeast(low) * -Math.expm1(logRatio(standard(low), (high - low) / deviation));
    }

    /** The mean of what lies between two bounds, the rest counted as nothing. */
    double meanBetween(double from, double to) {
        double low = standard(Math.max(from, least));
        double high = standard(Math.max(to, least));
        double kept = STANDARD.survivalProbability(standard(least));
        return mean * between(from, to) + deviation * (STANDARD.density(low) - STANDARD.density(high)) / kept;
    }

    /** The mean of what is kept. */
    double keptMean() {
        double a = standard(least);
        return a < FAR ? mean + deviation * hazard(a) : least + deviation / (a + fraction(2, a));
    }

    /** The standard deviation of what is kept. */
    double keptDeviation() {
        double a = standard(least);
        if (a >= FAR) {
            double further = fraction(2, a);
            double excess = 1 / (a + further);
            return deviation * Math.sqrt(excess * (further - excess));
        }
        double hazard = hazard(a);
        return hazard == 0 ? deviation : deviation * Math.sqrt(1 - hazard * (hazard - a));
    }

    private double standard(double size) {
        return (size - mean) / deviation;
    }

    private static double hazard(double a) {
        return STANDARD.density(a) / STANDARD.survivalProbability(a);
    }

    /** The logarithm of (1 − Φ(a + y)) / (1 − Φ(a)), far out. */
    private static double logRatio(double a, double y) {
        double z = a + y;
        return -y * (z + a) / 2 + Math.log((a + fraction(1, a)) / (z + fraction(1, z)));
    }

    /** n / (a + (n + 1) / (a + …)). */
    private static double fraction(int n, double a) {
        double value = 0;
        for (int i = n + TERMS; i >= n; i--) {
            value = i / (a + value);
        }
        return value;
    }
}
