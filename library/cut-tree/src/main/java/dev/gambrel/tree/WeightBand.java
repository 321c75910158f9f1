package dev.gambrel.tree;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;

/** The carcass weights for which a specification is written. */
public sealed interface WeightBand {
    /**
     * A band; both ends belong to it.
     *
     * @param low the lightest carcass
     * @param high the heaviest
     */
    record Stated(Quantity low, Quantity high) implements WeightBand {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if an end is no weight
         */
        public Stated {
            low.measuring(Dimension.WEIGHT);
            high.measuring(Dimension.WEIGHT);
        }

        /**
         * Whether a weight is in the band, compared exactly.
         *
         * @param weight a carcass weight on the specification's basis
         * @return true at both ends and between
         */
        public boolean holds(Quantity weight) {
            return weight.compareTo(low) >= 0 && weight.compareTo(high) <= 0;
        }
    }

    /** No band was written. */
    record NotStated() implements WeightBand {}
}
