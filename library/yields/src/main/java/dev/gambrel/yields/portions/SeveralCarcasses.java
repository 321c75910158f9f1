package dev.gambrel.yields.portions;

/**
 * Several carcasses that vary independently. How the two pieces of one vary together is said by the {@link
 * dev.gambrel.yields.working.Pairs} of the working.
 *
 * @param number how many, from 1 to {@value #MOST}
 * @param doubt about the house's mean: one standard deviation of the mean size of a piece, as a part of it, from 0 to 1. It
 *     is the same for all carcasses, so that it does not average out; 0 where the mean is known
 */
public record SeveralCarcasses(int number, double doubt) {
    /** More carcasses are not told apart. */
    public static final int MOST = 1_000_000;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the number is out of its range, or the doubt is not from 0 to 1
     */
    public SeveralCarcasses {
        if (number < 1 || number > MOST || !(0 <= doubt && doubt <= 1)) {
            throw new IllegalArgumentException(number + " carcasses, in doubt by " + doubt);
        }
    }

    /**
     * Carcasses of which the mean is known.
     *
     * @param number how many
     * @return the carcasses
     * @throws IllegalArgumentException if the number is out of its range
     */
    public static SeveralCarcasses of(int number) {
        return new SeveralCarcasses(number, 0);
    }
}
