package dev.gambrel.yields.packs.rule;

import java.math.BigDecimal;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * By how many standard deviations the mean of a sample may fall short of the nominal quantity: chance alone may take it so
 * far.
 *
 * <p>The rules print Student's t over the square root of the number of packs, rounded. What is printed is the law, even
 * where it is rounded.
 *
 * @param value standard deviations, 0 where every pack is weighed
 * @param packs how many packs it is for
 * @param citation where it stands
 */
public record MeanFactor(BigDecimal value, int packs, Citation citation) {
    /**
     * Student's t over the square root of n, for a number of packs of which a rule prints nothing.
     *
     * @param confidence the one-sided confidence, such as 0.995
     * @param packs how many packs, 2 or more
     * @return the quotient, good to a relative 1e-12
     * @throws IllegalArgumentException if there are fewer than 2 packs, or the confidence is not between 0 and 1
     */
    public static double workedOut(double confidence, int packs) {
        if (packs < 2 || !(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("a spread takes two packs, a confidence lies between 0 and 1");
        }
        return TDistribution.of(packs - 1.0).inverseCumulativeProbability(confidence) / Math.sqrt(packs);
    }
}
