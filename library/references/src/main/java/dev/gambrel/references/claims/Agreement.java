package dev.gambrel.references.claims;

/** How what words claim stands to what the number means. */
public enum Agreement {
    /** Both say the same. */
    AGREES("the same"),
    /** The words follow from what the number says, in another measure. */
    FOLLOWS("follows from the number"),
    /** The words ask for something more than the number; both can be kept. */
    TIGHTER("tighter than the number"),
    /** The words let more through than the number. */
    LOOSER("looser than the number"),
    /** Each lets something through that the other does not. */
    PARTLY("only partly within the number"),
    /** Nothing can be both. */
    CONTRADICTS("against the number"),
    /** The number says nothing of it, or what it says is not held. */
    NOT_STATED("not stated by the number");

    private final String words;

    Agreement(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return for example "against the number"
     */
    public String words() {
        return words;
    }

    /**
     * Whether a piece may keep the words and break the number.
     *
     * @return true for looser, partly and against
     */
    public boolean isConflict() {
        return this == LOOSER || this == PARTLY || this == CONTRADICTS;
    }
}
