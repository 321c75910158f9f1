package dev.gambrel.tree.portion;

/** How many pieces of a delivery may lie outside a limit. */
public sealed interface Outside {
    /** None. */
    record None() implements Outside {
        @Override
        public String toString() {
            return "none outside";
        }
    }

    /**
     * So many out of so many.
     *
     * @param most how many may lie outside, 1 or more
     * @param of out of how many, more than {@code most}
     */
    record OutOf(int most, int of) implements Outside {
        /**
         * Checks the two numbers.
         *
         * @throws IllegalArgumentException unless {@code 0 < most < of}
         */
        public OutOf {
            if (most < 1 || of <= most) {
                throw new IllegalArgumentException("not so many out of so many: " + most + " in " + of);
            }
        }

        @Override
        public String toString() {
            return "at most " + most + " in " + of + " outside";
        }
    }

    /**
     * Whether whoever keeps this keeps another too.
     *
     * @param other what is asked
     * @return true if no more may lie outside here, compared exactly
     */
    default boolean isWithin(Outside other) {
        if (!(this instanceof OutOf mine)) {
            return true;
        }
        return other instanceof OutOf theirs && (long) mine.most * theirs.of <= (long) theirs.most * mine.of;
    }
}
