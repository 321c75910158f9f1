package dev.gambrel.yields;

/**
 * How the shares of one cut vary together, given that they always add up to the whole.
 *
 * <p>The rule in words: parts vary independently, except that what one part gains the others lose. Their covariance C
 * therefore has rows that add up to 0, and keeps every standard deviation that was stated on its diagonal.
 */
interface Closure {
    /** How near two figures must be, relative to the larger, to count as equal. */
    double SAME = 1e-12;

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
