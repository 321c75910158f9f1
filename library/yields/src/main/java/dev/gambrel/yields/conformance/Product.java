package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.TreePath;

/**
 * Something of the house's that a buyer may ask for.
 *
 * @param kind what it is
 * @param path its path in the house's tree; of a stream its name alone
 */
public record Product(Kind kind, TreePath path) {
    /** What it is. */
    public enum Kind {
        /** The carcass as it comes in. */
        CARCASS,
        /** A cut. */
        CUT,
        /** A way in which a cut is worked. */
        WAY,
        /** A portion of a cut or a way. */
        PORTION,
        /** A stream that several cuts feed. */
        STREAM
    }
}
