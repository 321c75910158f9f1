package dev.gambrel.yields.conformance;

/** What can be said of one clause. */
public enum Verdict {
    /** What the house lays down is all that is asked. */
    MEETS("meets"),
    /** What the house lays down allows what is not accepted. */
    FAILS("fails"),
    /** The house lays down nothing that settles it, whatever it may expect. */
    NOT_STATED("not stated");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return "meets", "fails" or "not stated"
     */
    public String words() {
        return words;
    }
}
