package dev.gambrel.yields.conformance;

import dev.gambrel.quantity.Quantity;

/** How far what is laid down lies inside what is accepted. */
public sealed interface Margin {
    /**
     * So far, at the end where it is least.
     *
     * @param end the end of what is accepted
     * @param amount in the unit of what is asked; 0 if both are the same, less than 0 by how much it is passed
     */
    record At(End end, Quantity amount) implements Margin {}

    /** The end of a limit. */
    enum End {
        /** The least that is accepted. */
        LOW("at the low end"),
        /** The most that is accepted. */
        HIGH("at the top");

        private final String words;

        End(String words) {
            this.words = words;
        }

        /**
         * In print.
         *
         * @return "at the low end" or "at the top"
         */
        public String words() {
            return words;
        }
    }

    /** There are no figures to compare. */
    record None() implements Margin {}
}
