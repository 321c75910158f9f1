package dev.gambrel.yields;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.Basis;

/**
 * What a carcass weighed, and what it was weighed as: a weight always knows its basis.
 *
 * @param mass the weight in the unit that was read off the scale
 * @param basis live, in skin, warm or cold
 */
public record CarcassWeight(Quantity mass, Basis basis) {
    /**
     * Checks that it is a weight at all.
     *
     * @throws IllegalArgumentException if {@code mass} is a length, a share or the like
     */
    public CarcassWeight {
        if (mass.dimension() != Dimension.WEIGHT) {
            throw new IllegalArgumentException(
                    "not a weight: " + mass.dimension().words());
        }
    }
}
