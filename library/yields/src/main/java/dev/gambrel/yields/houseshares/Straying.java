package dev.gambrel.yields.houseshares;

/** How far the share of a part strays from test to test. */
public sealed interface Straying {
    /** There is one test, which tells no spread and no doubt. That is not none. */
    record OneTest() implements Straying {}

    /**
     * There are several.
     *
     * @param number how many tests that count alike would say as much, more than 1
     * @param spread how far the shares stray
     * @param errorOfMean the standard error of the mean of shares, parts of 1
     * @param errorOfRatio that of the ratio of sums, parts of 1
     */
    record Known(double number, ShareSpread spread, double errorOfMean, double errorOfRatio) implements Straying {}
}
