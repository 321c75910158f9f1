package dev.gambrel.yields.control;

import dev.gambrel.yields.figure.Interval;

/**
 * What the tests of one group give more, on average, than all the others.
 *
 * @param group the name of the group
 * @param tests how many tests it has
 * @param elsewhere how many the others have together
 * @param test the mean of the group less that of all others, in the unit of the figures, and whether it is more than chance
 * @param range the range that holds the true difference; all ranges together do so in 95 of 100 cases
 * @param chance how often chance alone makes some group differ as much as this one or more: the probability, adjusted for the number of
 *     groups
 */
public record GroupDifference(String group, int tests, int elsewhere, WelchTest test, Interval range, double chance) {
    /**
     * Whether chance hardly explains it.
     *
     * @return true if it does in fewer than 5 of 100 cases
     */
    public boolean isTold() {
        return chance < 1 - GroupComparison.SURE;
    }
}
