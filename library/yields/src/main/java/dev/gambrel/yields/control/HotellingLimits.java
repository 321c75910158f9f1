package dev.gambrel.yields.control;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * What T² may be (N. D. Tracy, J. C. Young and R. L. Mason, "Multivariate control charts for individual observations", Journal of
 * Quality Technology 24, 1992; the second limit also in the NIST/SEMATECH e-Handbook of Statistical Methods, 6.5.4.3).
 *
 * @param coordinates p, one fewer than the parts of the cut
 * @param tests m, how many tests the level was worked out of, 2 more than coordinates or more
 * @param falseAlarms how often chance alone may give a signal, above 0 and below 1
 */
public record HotellingLimits(int coordinates, int tests, double falseAlarms) {
    /** One test in 200. */
    public static final double USUAL = 0.005;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if there are too few coordinates or tests, or the false alarms are out of their range
     */
    public HotellingLimits {
        if (coordinates < 1 || tests < coordinates + 2 || !(falseAlarms > 0 && falseAlarms < 1)) {
            throw new IllegalArgumentException(
                    "no limit of " + coordinates + " coordinates, " + tests + " tests and " + falseAlarms);
        }
    }

    /**
     * For the tests that the level was worked out of: (m − 1)² / m Beta(p / 2, (m − p − 1) / 2).
     *
     * @return the limit
     */
    public double ofSameTests() {
        double m = tests;
        return (m - 1)
                * (m - 1)
                / m
                * BetaDistribution.of(coordinates / 2.0, (m - coordinates - 1) / 2)
                        .inverseSurvivalProbability(falseAlarms);
    }

    /**
     * For tests that came after: p (m + 1) (m − 1) / (m² − mp) F(p, m − p).
     *
     * @return the limit
     */
    public double ofLaterTests() {
        double m = tests;
        double p = coordinates;
        return p
                * (m + 1)
                * (m - 1)
                / (m * m - m * p)
                * FDistribution.of(p, m - p).inverseSurvivalProbability(falseAlarms);
    }
}
