package dev.gambrel.tree.portion;

/** Which of two figures is kept where both cannot be. */
public enum Precedence {
    /** Nobody has said. */
    NOT_STATED(""),
    /** The weight is kept and the thickness follows. */
    WEIGHT("weight"),
    /** The thickness is kept and the weight follows. */
    THICKNESS("thickness");

    private final String words;

    Precedence(String words) {
        this.words = words;
    }

    /**
     * What rules.
     *
     * @return "weight" or "thickness"; empty where nobody has said
     */
    public String words() {
        return words;
    }
}
