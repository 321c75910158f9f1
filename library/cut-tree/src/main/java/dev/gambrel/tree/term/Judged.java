package dev.gambrel.tree.term;

/** How lean is found. */
public enum Judged {
    /** Nobody has said. */
    NOT_STATED(""),
    /** By eye: parts lean to parts fat. */
    VISUAL("visual"),
    /** By analysis of fat. */
    CHEMICAL("chemical");

    private final String words;

    Judged(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return "visual", "chemical", or nothing
     */
    public String words() {
        return words;
    }
}
