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
     * @param lean how lean it is
     */
    record ToStream(TradeName stream, SourceLean lean) implements Home {
        /**
         * Put with a stream, and nothing said of how lean it is.
         *
         * @param stream the stream's name
         */
        public ToStream(TradeName stream) {
            this(stream, SourceLean.NOT_STATED);
        }
    }

    /** Nobody has said. */
    record NotStated() implements Home {}
}
