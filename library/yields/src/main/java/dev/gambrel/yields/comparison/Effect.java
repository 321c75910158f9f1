package dev.gambrel.yields.comparison;

/** What a change does to whoever relied on the earlier specification, the gravest first. */
public enum Effect {
    /** What another relies on is gone or is contradicted. */
    BREAKS("breaks", "what another relies on is gone or contradicted"),
    /** A limit leaves less room, or there is one where there was none. */
    TIGHTENS("tightens", "a limit leaves less room"),
    /** A limit leaves less room at one end and more at the other. */
    SHIFTS("shifts", "a limit leaves less room at one end and more at the other"),
    /** A limit leaves more room, or is gone. */
    LOOSENS("loosens", "a limit leaves more room"),
    /** Something is undertaken of which nothing was said. */
    ADDS("adds", "something is said of which nothing was said before"),
    /** No limit is touched, but other weights are expected, or they go elsewhere. */
    ALTERS_FIGURES("alters figures", "no limit is touched, but other weights are expected or they go elsewhere"),
    /** The bench goes about it otherwise, with the same meat in the end. */
    ALTERS_WORK("alters work", "the bench goes about it otherwise, with the same meat in the end"),
    /** The same in other words, or words that no rule reads. */
    REWORDS("rewords", "the same in other words, or free words, which only a person can judge");

    private final String words;
    private final String meaning;

    Effect(String words, String meaning) {
        this.words = words;
        this.meaning = meaning;
    }

    /**
     * In print.
     *
     * @return for example "tightens"
     */
    public String words() {
        return words;
    }

    /**
     * What that is.
     *
     * @return part of a sentence
     */
    public String meaning() {
        return meaning;
    }
}
