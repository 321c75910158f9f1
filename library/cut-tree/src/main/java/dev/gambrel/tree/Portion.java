package dev.gambrel.tree;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;

/**
 * A portion by weight.
 *
 * @param name "steak"
 * @param target the weight aimed at, with the spread of cutting where stated
 * @param range the weights that are accepted
 * @param remainder where what is left after the last whole portion goes
 */
public record Portion(TradeName name, Expected target, Range range, Home remainder) {
    /**
     * Checks the dimension.
     *
     * @throws IllegalArgumentException if the target is no weight
     */
    public Portion {
        target.measuring(Dimension.WEIGHT);
    }

    /** The weights that are accepted; a limit, not an expectation. */
    public sealed interface Range {
        /**
         * Both ends are accepted.
         *
         * @param low the lightest
         * @param high the heaviest
         */
        record Stated(Quantity low, Quantity high) implements Range {
            /**
             * Checks the dimension.
             *
             * @throws IllegalArgumentException if an end is no weight
             */
            public Stated {
                low.measuring(Dimension.WEIGHT);
                high.measuring(Dimension.WEIGHT);
            }
        }

        /** Nothing was said. */
        record NotStated() implements Range {}
    }
}
