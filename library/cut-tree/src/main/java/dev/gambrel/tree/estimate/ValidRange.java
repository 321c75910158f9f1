package dev.gambrel.tree.estimate;

import dev.gambrel.quantity.Quantity;

/** The readings for which a measurement or an equation holds. */
public sealed interface ValidRange {
    /**
     * A range; both ends belong to it.
     *
     * @param low the least
     * @param high the most, in the same dimension
     */
    record Stated(Quantity low, Quantity high) implements ValidRange {
        /**
         * Whether a reading is in the range, compared exactly.
         *
         * @param reading a reading of the dimension of both ends
         * @return true at both ends and between
         */
        public boolean holds(Quantity reading) {
            return reading.compareTo(low) >= 0 && reading.compareTo(high) <= 0;
        }
    }

    /** No range was written. */
    record NotStated() implements ValidRange {}
}
