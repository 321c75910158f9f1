package dev.gambrel.references.ranges;

import dev.gambrel.quantity.Quantity;

/** From where to where a range goes, as printed. */
public sealed interface Bounds {
    /**
     * Between two weights.
     *
     * @param from the lower, always held
     * @param to the upper, above {@code from}
     */
    record Between(Quantity from, Quantity to) implements Bounds {
        /**
         * Checks the order.
         *
         * @throws IllegalArgumentException if the lower is not below the upper
         */
        public Between {
            if (from.compareTo(to) >= 0) {
                throw new IllegalArgumentException("not a range: " + from + " to " + to);
            }
        }

        @Override
        public String toString() {
            return from.amount().toPlainString() + " to " + to;
        }
    }

    /**
     * Everything lighter.
     *
     * @param to never held
     */
    record Under(Quantity to) implements Bounds {
        @Override
        public String toString() {
            return "under " + to;
        }
    }

    /**
     * Without a top.
     *
     * @param from always held
     */
    record Up(Quantity from) implements Bounds {
        @Override
        public String toString() {
            return from + " and up";
        }
    }

    /**
     * Whether a weight is not too light.
     *
     * @param weight any weight
     * @return true if it is at the lower limit or above
     */
    default boolean isReachedBy(Quantity weight) {
        return this instanceof Between between
                ? weight.compareTo(between.from()) >= 0
                : !(this instanceof Up up) || weight.compareTo(up.from()) >= 0;
    }

    /**
     * Whether a weight is too heavy, where the upper limit is held.
     *
     * @param weight any weight
     * @return true if it is above the upper limit
     */
    default boolean isPassedBy(Quantity weight) {
        return this instanceof Between between
                ? weight.compareTo(between.to()) > 0
                : this instanceof Under under && weight.compareTo(under.to()) >= 0;
    }

    /**
     * Whether a weight is the upper limit itself.
     *
     * @param weight any weight
     * @return true if so
     */
    default boolean endsAt(Quantity weight) {
        return this instanceof Between between && weight.compareTo(between.to()) == 0
                || this instanceof Under under && weight.compareTo(under.to()) == 0;
    }
}
