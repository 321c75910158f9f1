package dev.gambrel.tree;

/** Who speaks: the house that cuts, or the buyer who asks. */
public enum Side {
    /** A house's specification: how it cuts and what it undertakes. */
    HOUSE("specification"),
    /** A buyer's requirement: what is asked of whoever cuts. */
    BUYER("requirement");

    private final String words;

    Side(String words) {
        this.words = words;
    }

    /**
     * What such a text is called.
     *
     * @return "specification" or "requirement"
     */
    public String words() {
        return words;
    }
}
