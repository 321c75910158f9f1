package dev.gambrel.tree.portion;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import java.util.Optional;

/** What is accepted of a weight or a thickness; a limit, not an expectation. The limit itself is accepted. */
public sealed interface Limit {
    /**
     * The least that is accepted.
     *
     * @return the low end, or nothing where there is none
     */
    default Optional<Quantity> least() {
        return Optional.empty();
    }

    /**
     * The most that is accepted.
     *
     * @return the high end, or nothing where there is none
     */
    default Optional<Quantity> most() {
        return Optional.empty();
    }

    /**
     * The same limit, for a place where only one dimension has a meaning.
     *
     * @param wanted the dimension
     * @return this
     * @throws IllegalArgumentException if it limits something else
     */
    default Limit measuring(Dimension wanted) {
        least().ifPresent(low -> low.measuring(wanted));
        most().ifPresent(high -> high.measuring(wanted));
        return this;
    }

    /**
     * Both ends are accepted.
     *
     * @param low the low end
     * @param high the high end, in the same dimension
     */
    record Between(Quantity low, Quantity high) implements Limit {
        /**
         * Checks that both ends measure the same.
         *
         * @throws IllegalArgumentException if they do not
         */
        public Between {
            high.measuring(low.dimension());
        }

        @Override
        public Optional<Quantity> least() {
            return Optional.of(low);
        }

        @Override
        public Optional<Quantity> most() {
            return Optional.of(high);
        }

        @Override
        public String toString() {
            return low.equals(high) ? "exactly " + low : low + " to " + high;
        }
    }

    /**
     * Nothing less.
     *
     * @param low the low end
     */
    record AtLeast(Quantity low) implements Limit {
        @Override
        public Optional<Quantity> least() {
            return Optional.of(low);
        }

        @Override
        public String toString() {
            return "at least " + low;
        }
    }

    /**
     * Nothing more.
     *
     * @param high the high end
     */
    record AtMost(Quantity high) implements Limit {
        @Override
        public Optional<Quantity> most() {
            return Optional.of(high);
        }

        @Override
        public String toString() {
            return "at most " + high;
        }
    }

    /** Nothing was said. */
    record NotStated() implements Limit {
        @Override
        public String toString() {
            return "not stated";
        }
    }
}
