package dev.gambrel.tree;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Precedence;
import dev.gambrel.tree.portion.Slicing;

/**
 * What a piece is portioned into: by weight, by thickness or by number.
 *
 * @param name "steak"
 * @param aim how large a portion is meant to be
 * @param acceptance what is accepted, and what gives way
 * @param slicing how the piece is sliced
 * @param finish how a portion is tied and packed
 * @param endPieces where the first and the last slice go
 * @param remainder where what is left after the last whole portion goes
 */
public record Portion(
        TradeName name,
        Aim aim,
        Acceptance acceptance,
        Slicing slicing,
        Finish finish,
        EndPieces endPieces,
        Home remainder) {
    /**
     * A portion by weight of which nothing more is said.
     *
     * @param name "steak"
     * @param target the weight aimed at, with the spread of cutting where stated
     * @param range the weights that are accepted
     * @param remainder where what is left goes
     * @return the portion
     * @throws IllegalArgumentException if the target is no weight
     */
    public static Portion byWeight(TradeName name, Expected target, Limit range, Home remainder) {
        return new Portion(
                name,
                new Aim.Weight(target),
                Acceptance.of(range),
                Slicing.NONE,
                Finish.NONE,
                new EndPieces.NotStated(),
                remainder);
    }

    /**
     * Whether something is said of its weight.
     *
     * @return true if a weight is aimed at or limited
     */
    public boolean speaksOfWeight() {
        return aim.targetWeight().isPresent() || !(acceptance.weight() instanceof Limit.NotStated);
    }

    /**
     * Whether something is said of its thickness.
     *
     * @return true if a thickness is aimed at or limited
     */
    public boolean speaksOfThickness() {
        return aim.targetThickness().isPresent() || !(acceptance.thickness() instanceof Limit.NotStated);
    }

    /**
     * Whether the slices are counted along the piece, and their weight follows.
     *
     * @return true if no weight is aimed at but a thickness is, or if thickness rules
     */
    public boolean isByThickness() {
        return aim instanceof Aim.Thickness
                || aim instanceof Aim.WeightAndThickness && acceptance.precedence() == Precedence.THICKNESS;
    }

    /** Where the first and the last slice go, which are not portions. */
    public sealed interface EndPieces {
        /**
         * Where they go.
         *
         * @return their home; not stated where nothing was said of them
         */
        Home home();

        /**
         * Sent somewhere, their weight not stated.
         *
         * @param home where they go
         */
        record Sent(Home home) implements EndPieces {}

        /**
         * Sent somewhere, both together so heavy.
         *
         * @param weight of both ends of one piece
         * @param home where they go
         */
        record Weighed(Expected weight, Home home) implements EndPieces {
            /**
             * Checks the dimension.
             *
             * @throws IllegalArgumentException if it is no weight
             */
            public Weighed {
                weight.measuring(Dimension.WEIGHT);
            }
        }

        /** Nothing was said: the piece is portioned from end to end. */
        record NotStated() implements EndPieces {
            @Override
            public Home home() {
                return new Home.NotStated();
            }
        }
    }
}
