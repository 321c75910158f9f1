package dev.gambrel.references.item;

/** Whether a cut has its bone. */
public enum BoneState {
    /** With its bone. */
    BONE_IN("bone in"),
    /** Without any. */
    BONELESS("boneless"),
    /** The publication does not say, or what was read of it does not. */
    NOT_STATED("bone not stated");

    private final String words;

    BoneState(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return for example "bone in"
     */
    public String words() {
        return words;
    }
}
