package dev.gambrel.yields.plan;

/** What a line of the yields is. */
public enum Kind {
    /** The carcass on some basis. */
    CARCASS,
    /** A cut as it enters the block, before trim. */
    CUT,
    /** What its trims, bones and losses leave of a cut. */
    TRIMMED,
    /** Bones. */
    BONE,
    /** Trim. */
    TRIM,
    /** A loss. */
    LOSS,
    /** What the other parts of a divided cut leave. */
    REST
}
