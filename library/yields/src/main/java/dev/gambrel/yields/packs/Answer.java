package dev.gambrel.yields.packs;

/** What a rule says of a batch. */
public enum Answer {
    /** It holds. */
    ACCEPT("accepted"),
    /** The packs weighed so far do not settle it. */
    SECOND_SAMPLE("not settled"),
    /** It is broken. */
    REJECT("not accepted");

    private final String words;

    Answer(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return for example "not accepted"
     */
    public String words() {
        return words;
    }

    /**
     * Both together: a broken rule counts most, then what is not settled.
     *
     * @param other what another rule says
     * @return the graver
     */
    public Answer and(Answer other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
