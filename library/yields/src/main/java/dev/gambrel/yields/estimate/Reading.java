package dev.gambrel.yields.estimate;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;

/** What was read off a carcass. */
public sealed interface Reading {
    /**
     * A figure.
     *
     * @param value the figure with its unit, or a plain number
     */
    record Figure(Quantity value) implements Reading {}

    /**
     * A score in words.
     *
     * @param word for example "thin"
     */
    record Score(TradeName word) implements Reading {}

    /**
     * In a sentence.
     *
     * @return the figure or the word
     */
    default String words() {
        return this instanceof Figure figure
                ? figure.value().toString()
                : ((Score) this).word().text();
    }
}
