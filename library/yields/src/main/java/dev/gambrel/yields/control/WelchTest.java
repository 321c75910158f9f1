package dev.gambrel.yields.control;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Whether the means of two sets of figures differ, each straying in its own way (B. L. Welch, "The generalization of 'Student's' problem
 * when several different population variances are involved", Biometrika 34, 1947).
 *
 * @param difference the one mean less the other
 * @param error its standard error, more than 0
 * @param freedom degrees of freedom
 */
public record WelchTest(double difference, double error, double freedom) {
    static WelchTest of(Readings one, Readings other) {
        double first = one.variance() / one.size();
        double second = other.variance() / other.size();
        double both = first + second;
        double squares = first * first / (one.size() - 1) + second * second / (other.size() - 1);
        return new WelchTest(one.mean() - other.mean(), Math.sqrt(both), both * both / squares);
    }

    /**
     * The statistic.
     *
     * @return t, the difference in standard errors
     */
    public double statistic() {
        return difference / error;
    }

    /**
     * How often chance alone makes two sets differ as much as these or more, either way.
     *
     * @return from 0 to 1
     */
    public double chance() {
        return Math.min(1, 2 * TDistribution.of(freedom).survivalProbability(Math.abs(statistic())));
    }

    /** Half of the range that holds the true difference so surely. */
    double half(double sure) {
        return TDistribution.of(freedom).inverseSurvivalProbability((1 - sure) / 2) * error;
    }
}
