package dev.gambrel.yields.portions;

/**
 * How likely each number of portions is, from one piece or from several carcasses. Immutable; safe between threads.
 *
 * <p>Chances of many and of few are each added up from their own side, so that a small chance is as exact as a large one.
 */
public sealed interface NumberOfPortions permits Listed, NearlyNormal {
    /**
     * The mean number.
     *
     * @return 0 or more
     */
    double expected();

    /**
     * The standard deviation of the number.
     *
     * @return 0 or more
     */
    double deviation();

    /**
     * The fewest that are likely at all.
     *
     * @return a number under which all together are less likely than 1e-18
     */
    long fewest();

    /**
     * The most that are likely at all.
     *
     * @return a number over which all together are less likely than 1e-18
     */
    long most();

    /**
     * The chance of exactly so many.
     *
     * @param number how many
     * @return from 0 to 1
     */
    double chanceOf(long number);

    /**
     * The chance of so many or more.
     *
     * @param number how many
     * @return from 0 to 1
     */
    double chanceOfAtLeast(long number);

    /**
     * The chance of so many or fewer.
     *
     * @param number how many
     * @return from 0 to 1
     */
    double chanceOfAtMost(long number);

    /**
     * The largest number that can be promised: that comes, or is exceeded, with at least some certainty.
     *
     * @param certainty a chance, more than 0 and less than 1, such as 0.95
     * @return the number, 0 or more
     * @throws IllegalArgumentException if the certainty is out of its range
     */
    long promised(double certainty);
}
