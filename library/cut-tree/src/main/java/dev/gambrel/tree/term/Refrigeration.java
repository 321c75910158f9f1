package dev.gambrel.tree.term;

/** Whether meat is chilled or frozen. */
public enum Refrigeration {
    /** Cold and never frozen. */
    CHILLED("chilled"),
    /** Frozen through. */
    FROZEN("frozen");

    private final String words;

    Refrigeration(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return "chilled" or "frozen"
     */
    public String words() {
        return words;
    }
}
