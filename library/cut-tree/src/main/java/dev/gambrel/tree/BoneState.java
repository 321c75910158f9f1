package dev.gambrel.tree;

/** Whether bone is left in a cut as it is sold. */
public enum BoneState {
    /** Nothing was said. */
    NOT_STATED("not stated"),
    /** As it grew. */
    BONE_IN("bone in"),
    /** Some of its bones are out. */
    PART_BONED("part boned"),
    /** No bone is left in it. */
    BONELESS("boneless");

    private final String words;

    BoneState(String words) {
        this.words = words;
    }

    /**
     * The state in print.
     *
     * @return for example "bone in"
     */
    public String words() {
        return words;
    }
}
