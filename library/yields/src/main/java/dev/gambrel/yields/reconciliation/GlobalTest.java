package dev.gambrel.yields.reconciliation;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether a sheet as a whole fits the errors that its scales are said to have.
 *
 * @param chiSquare the least sum of squared corrections, each in standard deviations of its reading
 * @param degreesOfFreedom how many independent checks the sheet holds; with 0 nothing was checked
 */
public record GlobalTest(double chiSquare, int degreesOfFreedom) {
    /**
     * How likely a sheet without a wrong reading fits no better than this.
     *
     * @return from 0 to 1; 1 where nothing was checked
     */
    public double probability() {
        return degreesOfFreedom == 0
                ? 1
                : ChiSquaredDistribution.of(degreesOfFreedom).survivalProbability(chiSquare);
    }

    /**
     * What the standard deviations of all readings would have to be multiplied by for the sheet to fit as well as is to be expected:
     * sqrt(J/dof) (R. T. Birge, "The calculation of errors by the method of least squares", Physical Review 40, 1932). Much above
     * 1, with no one reading to blame, the errors stated for the scales are too small by about this.
     *
     * @return 0 or more; 1 where nothing was checked
     */
    public double errorFactor() {
        return degreesOfFreedom == 0 ? 1 : Math.sqrt(chiSquare / degreesOfFreedom);
    }
}
