package dev.gambrel.references.ranges;

import dev.gambrel.quantity.Quantity;

/** Where a piece lies among the ranges of an item. */
public sealed interface Placement {
    /**
     * In a range.
     *
     * @param range the one range that it is in
     * @param isOnEdge whether it weighs exactly what two ranges have as their limit; the heavier has it
     */
    record In(PieceRange range, boolean isOnEdge) implements Placement {}

    /**
     * In none: lighter than all, heavier than all, or between two that do not touch.
     *
     * @param weight what it weighs
     */
    record InNone(Quantity weight) implements Placement {}
}
