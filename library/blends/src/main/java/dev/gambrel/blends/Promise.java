package dev.gambrel.blends;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** How surely a blend must be as lean as its target says at the least. */
public sealed interface Promise {
    /** On average: every other batch is fatter. */
    Promise ON_AVERAGE = new OnAverage();

    /** On average: every other batch is fatter. */
    record OnAverage() implements Promise {}

    /**
     * In so many batches of a hundred: a chance constraint (A. Charnes and W. W. Cooper, "Chance-constrained programming",
     * Management Science 6, 1959, from memory).
     *
     * @param chance from 0.5, which is on average, to less than 1
     */
    record At(double chance) implements Promise {
        /**
         * Checks the chance.
         *
         * @throws IllegalArgumentException if it is below one half, or certainty
         */
        public At {
            if (!(chance >= 0.5 && chance < 1)) {
                throw new IllegalArgumentException("a promise holds with a chance from 0.5 to below 1, not " + chance);
            }
        }
    }

    /**
     * How many standard deviations the mean must stay away from the target.
     *
     * @return 0 on average
     */
    default double deviations() {
        return this instanceof At at ? NormalDistribution.of(0, 1).inverseCumulativeProbability(at.chance()) : 0;
    }
}
