package dev.gambrel.yields.testedcuts;

import dev.gambrel.yields.houseshares.Averaging;

/** What a found share is the mean of. */
public enum Mean {
    /** The weight of the part in all tests over that of the cut. For planning. */
    SUMS(Averaging.RATIO_OF_SUMS.words()),
    /** The mean of the shares of the tests. */
    SHARES(Averaging.MEAN_OF_SHARES.words()),
    /** The mean of the ratios between the parts, by their logarithms; ranges stay between 0 and 100 %. */
    RATIOS("mean of ratios: the geometric mean of the ratios between parts, every carcass counts once");

    private final String words;

    Mean(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return for example "mean of shares: every carcass counts once"
     */
    public String words() {
        return words;
    }

    /** Of shares taken part by part. */
    Averaging averaging() {
        return this == SHARES ? Averaging.MEAN_OF_SHARES : Averaging.RATIO_OF_SUMS;
    }
}
