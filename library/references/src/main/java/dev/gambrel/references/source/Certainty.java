package dev.gambrel.references.source;

/** How sure it is that a publication says what is held here. */
public enum Certainty {
    /** Read in the document itself, or in an excerpt of it. */
    SEEN("seen"),
    /** Read where somebody else quotes the document. */
    SEEN_QUOTED("seen as quoted elsewhere"),
    /** Read in a proposal or a draft; what was adopted may differ. */
    SEEN_IN_DRAFT("seen in a draft, not in what was adopted"),
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
