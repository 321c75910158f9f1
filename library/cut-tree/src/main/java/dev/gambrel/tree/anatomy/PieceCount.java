package dev.gambrel.tree.anatomy;

/** How many of a cut one carcass gives. */
public enum PieceCount {
    /** As many as of the cut above it. */
    NOT_STATED,
    /** A single piece, such as a neck. */
    ONE,
    /** Left and right. */
    TWO;

    /**
     * The number of pieces of one carcass.
     *
     * @param above the number of the cut above, 1 for the carcass
     * @return 1 or 2
     */
    public int perCarcass(int above) {
        return switch (this) {
            case NOT_STATED -> above;
            case ONE -> 1;
            case TWO -> 2;
        };
    }
}
