package dev.gambrel.yields.conformance;

/** What can be said of a specification as a whole. */
public enum Overall {
    /** Every clause is met. */
    CONFORMS("conforms"),
    /** No clause fails, and not every one is known to be met. */
    NOT_SHOWN("not shown to conform"),
    /** A clause fails. */
    DOES_NOT_CONFORM("does not conform");

    private final String words;

    Overall(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return "conforms", "not shown to conform" or "does not conform"
     */
    public String words() {
        return words;
    }
}
