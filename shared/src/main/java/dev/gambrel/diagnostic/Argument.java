package dev.gambrel.diagnostic;

import dev.gambrel.quantity.Quantity;

/** A named value in the sentence of a finding, typed so that no program need read the sentence. */
public sealed interface Argument {
    /**
     * The name under which the pattern asks for it.
     *
     * @return the name
     */
    String name();

    /**
     * The value in the sentence.
     *
     * @return words for people
     */
    String shown();

    /**
     * Words, usually somebody's name for something.
     *
     * @param name the argument's name
     * @param text the words
     */
    record Text(String name, String text) implements Argument {
        private static final int LONGEST_SHOWN = 160;

        @Override
        public String shown() {
            if (text.length() <= LONGEST_SHOWN) {
                return text;
            }
            boolean splits = Character.isHighSurrogate(text.charAt(LONGEST_SHOWN - 1));
            return text.substring(0, splits ? LONGEST_SHOWN - 1 : LONGEST_SHOWN) + "…";
        }
    }

    /**
     * A count.
     *
     * @param name the argument's name
     * @param count how many
     */
    record Count(String name, long count) implements Argument {
        @Override
        public String shown() {
            return Long.toString(count);
        }
    }

    /**
     * A quantity with its unit.
     *
     * @param name the argument's name
     * @param quantity the quantity
     */
    record Measure(String name, Quantity quantity) implements Argument {
        @Override
        public String shown() {
            return quantity.toString();
        }
    }
}
