package dev.gambrel.yields.portions;

/**
 * What somebody wants to promise: so sure, from so many carcasses.
 *
 * @param certainty the chance that what is promised comes, more than 0 and less than 1
 * @param from the carcasses
 */
public record Promise(double certainty, SeveralCarcasses from) {
    /**
     * Checks the certainty.
     *
     * @throws IllegalArgumentException if it is not between 0 and 1
     */
    public Promise {
        check(certainty);
    }

    static void check(double certainty) {
        if (!(certainty > 0 && certainty < 1)) {
            throw new IllegalArgumentException("nothing is sure to " + certainty);
        }
    }
}
