package dev.gambrel.yields.drift;

import dev.gambrel.yields.control.IndividualsChart;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * How often a test passes limits of 3 standard deviations that rest on the tests before it, while nothing changes. The mean of those is off
 * itself, and a mean range of neighbours tells the standard deviation about as well as 0.62 (n − 1) degrees of freedom (from memory), so it
 * is Student's t. What is said is on the safe side of what is drawn: by up to a half for single tests, by up to two and a half times for
 * averages.
 */
final class PassedByChance {
    private static final double FREEDOM = 0.62;

    private PassedByChance() {}

    /** Of single tests, from 0 to 1. */
    static double single(int first) {
        return passed(first, 1);
    }

    /** Of averages that count the newest test so much, from 0 to 1. */
    static double average(int first, double lambda) {
        return passed(first, lambda / (2 - lambda));
    }

    private static double passed(int first, double spread) {
        double limit = IndividualsChart.LIMITS / Math.sqrt(1 + 1 / (first * spread));
        return 2 * TDistribution.of(FREEDOM * (first - 1)).survivalProbability(limit);
    }
}
