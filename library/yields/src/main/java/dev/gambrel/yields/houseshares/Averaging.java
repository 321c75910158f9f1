package dev.gambrel.yields.houseshares;

/** What a mean share is the mean of. The two differ where heavy carcasses are cut to other shares than light ones. */
public enum Averaging {
    /** The weight of the part in all tests over that of the cut: every kilogram counts once. For planning. */
    RATIO_OF_SUMS("ratio of sums: every kilogram counts once"),
    /** The mean of the shares of the tests: every carcass counts once. */
    MEAN_OF_SHARES("mean of shares: every carcass counts once");

    private final String words;

    Averaging(String words) {
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
}
