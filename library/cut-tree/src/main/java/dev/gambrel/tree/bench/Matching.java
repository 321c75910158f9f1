package dev.gambrel.tree.bench;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;

/** How alike the left and the right of a pair must be. */
public sealed interface Matching {
    /** Left and right alike to the eye. */
    record Alike() implements Matching {}

    /**
     * Left and right alike in weight.
     *
     * @param difference the most by which their weights may differ, itself accepted
     */
    record Within(Quantity difference) implements Matching {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if it is no weight
         */
        public Within {
            difference.measuring(Dimension.WEIGHT);
        }
    }

    /** Nothing was said. */
    record NotStated() implements Matching {}
}
