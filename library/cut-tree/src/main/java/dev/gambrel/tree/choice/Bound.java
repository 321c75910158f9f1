package dev.gambrel.tree.choice;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;

/**
 * A limit on a weight, held exactly.
 *
 * @param kind on which side of the weight, and whether the weight itself is meant
 * @param weight the weight
 */
public record Bound(Kind kind, Quantity weight) {
    /** On which side of a weight, and whether the weight itself belongs to it. */
    public enum Kind {
        /** Less, the weight itself left out. */
        UNDER("under"),
        /** Less, or the weight itself. */
        AT_MOST("at most"),
        /** More, the weight itself left out. */
        OVER("over"),
        /** More, or the weight itself. */
        AT_LEAST("at least");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * In a sentence.
         *
         * @return for example "at most"
         */
        public String words() {
            return words;
        }
    }

    /**
     * Checks the dimension.
     *
     * @throws IllegalArgumentException if the figure is no weight
     */
    public Bound {
        weight.measuring(Dimension.WEIGHT);
    }

    @Override
    public String toString() {
        return kind.words() + " " + weight;
    }
}
