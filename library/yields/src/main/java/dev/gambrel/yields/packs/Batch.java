package dev.gambrel.yields.packs;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;

/**
 * A batch: packs of one product and one production run, made in one place, whose labels all say the same.
 *
 * @param packs how many there are, 1 or more
 * @param nominal the weight that each label says, net
 */
public record Batch(long packs, Quantity nominal) {
    /**
     * Checks both.
     *
     * @throws IllegalArgumentException if there is no pack, or {@code nominal} is no weight or not more than nothing
     */
    public Batch {
        nominal.measuring(Dimension.WEIGHT);
        if (packs < 1 || nominal.amount().signum() <= 0) {
            throw new IllegalArgumentException("a batch has packs, and a pack weighs something");
        }
    }
}
