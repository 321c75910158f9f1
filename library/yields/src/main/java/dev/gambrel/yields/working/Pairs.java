package dev.gambrel.yields.working;

import dev.gambrel.yields.figure.Estimate;

/**
 * How the two pieces of a pair vary together: the legs of one carcass are never strangers to each other. A specification
 * states the spread of both pieces together; what one piece strays by follows from this. If nothing is said the two are taken
 * as {@link #ALIKE}.
 *
 * @param correlation of the weights of the two pieces, from 0 to 1
 */
public record Pairs(double correlation) {
    /** Both pieces weigh the same: all that varies is from carcass to carcass. One of two has half the spread of both. */
    public static final Pairs ALIKE = new Pairs(1);

    /** What one piece weighs says nothing of the other. One of two has 0.71 of the spread of both. */
    public static final Pairs INDEPENDENT = new Pairs(0);

    /**
     * Checks the correlation.
     *
     * @throws IllegalArgumentException if it is not from 0 to 1
     */
    public Pairs {
        if (!(correlation >= 0 && correlation <= 1)) {
            throw new IllegalArgumentException("the pieces of a pair are correlated from 0 to 1, not " + correlation);
        }
    }

    /**
     * How much further one piece strays than its part of all.
     *
     * <p>The variance of n pieces together, each of variance s² and any two of correlation r, is n s² (1 + (n − 1) r), the sum
     * of all their variances and covariances.
     *
     * @param ofCarcass n, how many pieces a carcass has
     * @return s over the n-th part of the standard deviation of all: 1 where they are alike
     */
    public double apart(int ofCarcass) {
        return Math.sqrt(ofCarcass / (1 + (ofCarcass - 1) * correlation));
    }

    /**
     * One of the pieces.
     *
     * @param all mean and spread of the pieces together
     * @param ofCarcass n, how many pieces a carcass has
     * @param pieces how many of them {@code all} are: n, or fewer where some are worked in another way
     * @return mean and spread of one
     */
    public Estimate onePiece(Estimate all, int ofCarcass, double pieces) {
        Estimate alike = all.times(1 / pieces);
        return new Estimate(
                alike.mean(),
                new Estimate(0, alike.spread()).times(apart(ofCarcass)).spread());
    }

    /**
     * In print.
     *
     * @return for example "alike", "independent" or "correlated by 0.8"
     */
    public String words() {
        if (equals(ALIKE)) {
            return "alike";
        }
        return equals(INDEPENDENT) ? "independent" : "correlated by " + correlation;
    }
}
