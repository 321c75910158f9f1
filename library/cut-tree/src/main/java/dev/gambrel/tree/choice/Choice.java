package dev.gambrel.tree.choice;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;

/** When a cut is worked in a way. */
public sealed interface Choice {
    /** As a rule: unless something else is asked for, and of all that no condition takes. */
    record AsARule() implements Choice {}

    /**
     * A standing share of the pieces: half of the topsides.
     *
     * @param share per cent of the pieces
     */
    record OfPieces(Quantity share) implements Choice {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if the figure is no share
         */
        public OfPieces {
            share.measuring(Dimension.SHARE);
        }
    }

    /**
     * When something is so.
     *
     * @param condition what
     */
    record When(Condition condition) implements Choice {}

    /** Only when a run asks for it. */
    record OnRequest() implements Choice {}
}
