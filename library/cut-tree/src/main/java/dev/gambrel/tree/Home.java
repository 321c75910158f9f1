package dev.gambrel.tree;

import dev.gambrel.text.TradeName;

/** Where a weight of meat ends up. */
public sealed interface Home {
    /** Sold under its own name. */
    record Product() implements Home {}

    /**
     * Put with a stream.
     *
     * @param stream the stream's name
     */
    record ToStream(TradeName stream) implements Home {}

    /** Nobody has said. */
    record NotStated() implements Home {}
}
