package dev.gambrel.yields.portions;

/**
 * Several carcasses, and what their pieces have in common.
 *
 * @param number how many, from 1 to {@value #MOST}
 * @param pieces whether the pieces of one carcass are alike; different carcasses vary independently
 * @param doubt about the house's mean: one standard deviation of the mean size of a piece, as a part of it. It is the same
 *     for all carcasses, so that it does not average out; 0 where the mean is known
 */
public record Carcasses(int number, Pieces pieces, double doubt) {
    /** More carcasses are not told apart. */
    public static final int MOST = 1_000_000;

    /** How the pieces of one carcass vary. */
    public enum Pieces {
        /** Each weighs as much as the other, so that each gives as many portions. */
        ALIKE,
        /** The one says nothing of the other. */
        INDEPENDENT
    }

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the number is out of its range, or the doubt is less than 0 or more than 1
     */
    public Carcasses {
        if (number < 1 || number > MOST || !(doubt >= 0 && doubt <= 1)) {
            throw new IllegalArgumentException(number + " carcasses, in doubt by " + doubt);
        }
    }

    /**
     * Carcasses of which the mean is known and each has pieces that are alike, as the yields take them.
     *
     * @param number how many
     * @return the carcasses
     * @throws IllegalArgumentException if the number is out of its range
     */
    public static Carcasses of(int number) {
        return new Carcasses(number, Pieces.ALIKE, 0);
    }
}
