package dev.gambrel.yields.reconciliation.error;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** How far the largest of several tests may stray before something is said to be wrong. */
public final class Sidak {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private Sidak() {}

    /**
     * The value that the largest of several standard normal figures exceeds, up or down, no more often than asked: each is tested at 1 - (1 -
     * level)^(1/n) (Z. Šidák, "Rectangular confidence regions for the means of multivariate normal distributions", Journal of the American
     * Statistical Association 62, 1967). Exact if they are independent, on the safe side if not.
     *
     * @param tests how many, 1 or more
     * @param level the chance of a false alarm in all of them together, such as 0.05
     * @return standard deviations
     * @throws IllegalArgumentException if there is no test, or the level is not between 0 and 1
     */
    public static double critical(int tests, double level) {
        if (tests < 1 || !(level > 0 && level < 1)) {
            throw new IllegalArgumentException(tests + " tests at a level of " + level);
        }
        double each = -Math.expm1(Math.log1p(-level) / tests);
        return STANDARD.inverseSurvivalProbability(each / 2);
    }
}
