package dev.gambrel.yields.portions;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A number of portions that is spread too widely to be counted out, taken as normal with half a portion of continuity
 * correction (W. Feller, An Introduction to Probability Theory and Its Applications, volume 1, chapter VII).
 */
record NearlyNormal(double expected, double deviation) implements NumberOfPortions {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    /** What lies further out than so many standard deviations is less likely than 1e-18. */
    private static final double CERTAIN = 9;

    @Override
    public long fewest() {
        return (long) Math.max(0, Math.floor(expected - CERTAIN * deviation));
    }

    @Override
    public long most() {
        return (long) Math.ceil(expected + CERTAIN * deviation);
    }

    @Override
    public double chanceOf(long number) {
        return number == 0 ? chanceOfAtMost(0) : STANDARD.probability(standard(number - 0.5), standard(number + 0.5));
    }

    @Override
    public double chanceOfAtLeast(long number) {
        return number <= 0 ? 1 : STANDARD.survivalProbability(standard(number - 0.5));
    }

    @Override
    public double chanceOfAtMost(long number) {
        return number < 0 ? 0 : STANDARD.cumulativeProbability(standard(number + 0.5));
    }

    @Override
    public long promised(double certainty) {
        Promise.check(certainty);
        double number = expected + deviation * STANDARD.inverseSurvivalProbability(certainty);
        return (long) Math.max(0, Math.floor(number + 0.5));
    }

    private double standard(double number) {
        return (number - expected) / deviation;
    }
}
