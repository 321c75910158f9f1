package dev.gambrel.tree;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.tree.term.Judged;

/** How lean the meat is that goes to a stream from one place. */
public sealed interface SourceLean {
    /** Nothing was said. */
    SourceLean NOT_STATED = new NotStated();

    /**
     * A figure.
     *
     * @param percent per cent lean, and how far it strays
     * @param judged how it is found: the two ways are never mixed
     */
    record Stated(Expected percent, Judged judged) implements SourceLean {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if the figure is no share
         */
        public Stated {
            percent.measuring(Dimension.SHARE);
        }
    }

    /** Nothing was said. */
    record NotStated() implements SourceLean {}
}
