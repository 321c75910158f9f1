package dev.gambrel.yields.packs.rule;

/** What is asked of packs of one nominal quantity. */
public enum PackRule {
    /** They hold the nominal quantity on average. */
    MEAN("the mean"),
    /** Few lack more than the tolerable negative error: few are under T1. */
    FIRST_LIMIT("T1"),
    /** None lacks more than twice the tolerable negative error: none is under T2. */
    SECOND_LIMIT("T2");

    private final String words;

    PackRule(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return "the mean", "T1" or "T2"
     */
    public String words() {
        return words;
    }
}
