package dev.gambrel.yields.portions;

/**
 * Several carcasses that vary independently. How the two pieces of one vary together is said by the {@link
 * dev.gambrel.yields.working.Pairs} of the working.
 *
 * @param number how many, from 1 to {@value #MOST}
 * @param doubt how far the house's mean may be off
 */
public record SeveralCarcasses(int number, MeanDoubt doubt) {
    /** More carcasses are not told apart. */
    public static final int MOST = 1_000_000;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the number is out of its range
     */
    public SeveralCarcasses {
        if (number < 1 || number > MOST) {
            throw new IllegalArgumentException(number + " carcasses");
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
        return new SeveralCarcasses(number, MeanDoubt.NONE);
    }

    /**
     * Carcasses cut by shares that rest on cutting tests.
     *
     * @param number how many carcasses
     * @param tests how many cutting tests
     * @return the carcasses
     * @throws IllegalArgumentException if either number is out of its range
     */
    public static SeveralCarcasses of(int number, int tests) {
        return new SeveralCarcasses(number, new MeanDoubt.FromTests(tests));
    }
}
