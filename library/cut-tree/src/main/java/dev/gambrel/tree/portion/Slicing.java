package dev.gambrel.tree.portion;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;

/**
 * How a piece is sliced.
 *
 * @param kerf the length that saw or knife takes at each cut; the meat that was there is gone
 * @param length the length of the piece that is sliced
 * @param direction "across the grain"; empty where nothing was said
 */
public record Slicing(Measure kerf, Length length, String direction) {
    /** Nothing said. */
    public static final Slicing NONE = new Slicing(new Measure.NotStated(), new Length.NotStated(), "");

    /**
     * Checks the dimensions.
     *
     * @throws IllegalArgumentException if the kerf is no length
     */
    public Slicing {
        kerf.measuring(Dimension.LENGTH);
    }

    /** The length of a piece. */
    public sealed interface Length {
        /**
         * A length.
         *
         * @param expected the length, with its spread where stated
         */
        record Stated(Expected expected) implements Length {
            /**
             * Checks the dimension.
             *
             * @throws IllegalArgumentException if it is no length
             */
            public Stated {
                expected.measuring(Dimension.LENGTH);
            }
        }

        /** Nothing was said. */
        record NotStated() implements Length {}
    }
}
