package dev.gambrel.batches;

/** What is written of each carcass. */
public enum Each {
    /** Every outcome, products, and every stream. */
    TOTALS,
    /** Every line of the specification. */
    LINES,
    /** Nothing: only the sums are wanted. */
    NOTHING
}
