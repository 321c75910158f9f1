package dev.gambrel.yields.portions;

/**
 * Several carcasses that vary independently, and what their pieces have in common.
 *
 * @param number how many, from 1 to {@value #MOST}
 * @param correlation of the sizes of the two pieces of a carcass: 1 where they are alike, so that each gives as many
 *     portions, 0 where the one says nothing of the other; to be that of the working's {@link
 *     dev.gambrel.yields.working.Pairs}, by which the size of one strays
 * @param doubt about the house's mean: one standard deviation of the mean size of a piece, as a part of it. It is the same
 *     for all carcasses, so that it does not average out; 0 where the mean is known
 */
public record SeveralCarcasses(int number, double correlation, double doubt) {
    /** More carcasses are not told apart. */
    public static final int MOST = 1_000_000;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the number is out of its range, or another is not from 0 to 1
     */
    public SeveralCarcasses {
        boolean ofOne = 0 <= correlation && correlation <= 1 && 0 <= doubt && doubt <= 1;
        if (number < 1 || number > MOST || !ofOne) {
            throw new IllegalArgumentException(
                    number + " carcasses, correlated by " + correlation + ", in doubt by " + doubt);
        }
    }

    /**
     * Carcasses of which the mean is known and each has pieces that are alike.
     *
     * @param number how many
     * @return the carcasses
     * @throws IllegalArgumentException if the number is out of its range
     */
    public static SeveralCarcasses of(int number) {
        return new SeveralCarcasses(number, 1, 0);
    }
}
