package dev.gambrel.yields.packs.rule;

/** How sure a figure of a rule is. */
public enum Certainty {
    /** Read in the document itself. */
    SEEN("seen"),
    /** Read where somebody else quotes the document. */
    SEEN_QUOTED("seen as quoted elsewhere"),
    /** Worked out by the formula that the rule rests on, where the rule prints no figure. */
    WORKED_OUT("worked out here"),
    /** Recalled and not found again: look it up before anything rests on it. */
    FROM_MEMORY("from memory");

    private final String words;

    Certainty(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return for example "from memory"
     */
    public String words() {
        return words;
    }
}
