package dev.gambrel.yields.closure;

import java.util.Arrays;

/**
 * How the shares of one cut vary together, given that they always add up to the whole.
 *
 * <p>The rule in words: parts vary independently, except that what one part gains the others lose. Their covariance C
 * therefore has rows that add up to 0, and keeps every standard deviation that was stated on its diagonal.
 *
 * <ul>
 *   <li>Where one part takes what is left, the others are independent and it takes what they leave: its variance is the sum of
 *       theirs, its covariance with each is minus that one's variance.
 *   <li>Where every part has a spread and none takes what is left, let m be the part of the largest spread and o the others: C_oo
 *       = diag(d) − k d d', the covariance of independent parts of variances d given their sum (T. W. Anderson, An Introduction to
 *       Multivariate Statistical Analysis, 2.5, conditional distributions of the normal) for k = 1 / Σd over all, and of the same
 *       form for any other k; d_j − k d_j² = s_j² keeps the spreads of the others, and the one k for which the sum of C_oo is s_m²
 *       that of m.
 *   <li>Such a k is there exactly when no spread exceeds the sum of the others. No covariance of any form has spreads that break
 *       this rule: figures that add up to 0 are as the sides of a closed polygon, their standard deviations the lengths, and no
 *       side of a polygon is longer than the others together (Minkowski's inequality: the standard deviation of a sum is at most
 *       the sum of the standard deviations).
 *   <li>Where the spreads of some parts are not stated, nothing is said of how two others vary together.
 * </ul>
 *
 * <p>A covariance of shares cannot be read off shares that were observed and correlated part by part: what one gains others lose,
 * whatever the animal does (K. Pearson, "On a form of spurious correlation which may arise when indices are used in the measurement
 * of organs", Proceedings of the Royal Society of London 60, 1897).
 */
public sealed interface Closure permits ClosedByOne, Conditioned, InTwoWays, PartlyStated {
    /** How near two figures must be, relative to the larger, to count as equal. */
    double SAME = 1e-12;

    /**
     * One part takes what the others leave, and the others are independent.
     *
     * @param closing which part takes what is left
     * @param sd the standard deviations of the shares, NaN where not stated; the closing part's own is not read
     * @return how the shares vary together
     */
    static Closure byOne(int closing, double[] sd) {
        return new ClosedByOne(closing, sd.clone());
    }

    /**
     * Every part has a stated spread and none takes what is left: independence conditioned on the sum, as far as it keeps
     * every stated spread.
     *
     * @param sd the standard deviations of the shares
     * @return how the shares vary together
     * @throws IllegalArgumentException if one exceeds the sum of the others
     */
    static Closure amongAll(double[] sd) {
        boolean certain = Arrays.stream(sd).allMatch(each -> each == 0);
        return certain ? byOne(0, sd) : new Conditioned(sd);
    }

    /**
     * The variance of a sum over the parts in which each share counts with its own figure: y'Cy.
     *
     * <p>Figures are taken relative to one part's, which changes nothing since the rows of C add up to 0, and keeps digits
     * that would cancel. Costs O(parts).
     *
     * @param y figures
     * @param first where the first part's figure stands among them
     * @return the variance, or NaN where the stated spreads do not settle it
     */
    default double variance(double[] y, int first) {
        return Math.max(0, covariance(y, y, first));
    }

    /**
     * The covariance of two sums over the parts: y'Cz. Costs O(parts).
     *
     * @param y figures of the one
     * @param z figures of the other
     * @param first where the first part's figures stand among them
     * @return the covariance, or NaN where the stated spreads do not settle it
     */
    double covariance(double[] y, double[] z, int first);

    /** The difference of two figures, exactly 0 where only rounding parts them. */
    static double difference(double a, double b) {
        double gap = a - b;
        return Math.abs(gap) <= SAME * Math.max(Math.abs(a), Math.abs(b)) ? 0 : gap;
    }
}
