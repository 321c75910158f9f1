package dev.gambrel.yields.figure;

/**
 * A figure of several carcasses together, with both ways in which it strays told apart.
 *
 * @param mean the mean; kilograms where it is a weight
 * @param between what comes of carcasses being different from one another: it averages out as there are more
 * @param doubt what comes of the mean shares not being known exactly: it is the same for all carcasses and grows with their
 *     number
 */
public record CombinedEstimate(double mean, Spread between, Spread doubt) {
    /**
     * With both ways together, which know nothing of one another: their variances add up.
     *
     * @return mean and spread; the spread is not stated unless both are
     */
    public Estimate whole() {
        return Estimate.of(mean, between.variance() + doubt.variance());
    }

    /**
     * As if the mean shares were known exactly.
     *
     * @return mean, and the spread between carcasses alone
     */
    public Estimate betweenAlone() {
        return new Estimate(mean, between);
    }
}
