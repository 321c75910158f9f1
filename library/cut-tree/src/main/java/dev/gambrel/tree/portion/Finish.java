package dev.gambrel.tree.portion;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * What is done to a portion once it is cut.
 *
 * @param binding how it is tied or netted
 * @param pack how many go together
 * @param tares what is weighed with it and is not meat
 */
public record Finish(Binding binding, Pack pack, List<Tare> tares) {
    /** Nothing said. */
    public static final Finish NONE = new Finish(new Binding.NotStated(), new Pack.NotStated(), List.of());

    /** Copies the list. */
    public Finish {
        tares = List.copyOf(tares);
    }

    /** How a joint is held together. */
    public sealed interface Binding {
        /**
         * With so many ties.
         *
         * @param times how many
         */
        record Tied(int times) implements Binding {}

        /**
         * With a tie at every so much.
         *
         * @param spacing the length from tie to tie
         */
        record TiedEvery(Quantity spacing) implements Binding {
            /**
             * Checks the dimension.
             *
             * @throws IllegalArgumentException if it is no length
             */
            public TiedEvery {
                spacing.measuring(Dimension.LENGTH);
            }
        }

        /**
         * In a net.
         *
         * @param size the size of the net as it is sold, a length
         */
        record Netted(Quantity size) implements Binding {
            /**
             * Checks the dimension.
             *
             * @throws IllegalArgumentException if it is no length
             */
            public Netted {
                size.measuring(Dimension.LENGTH);
            }
        }

        /** Nothing was said. */
        record NotStated() implements Binding {}
    }

    /** What portions are packed in. */
    public sealed interface Pack {
        /**
         * So many together.
         *
         * @param number how many to one
         * @param container "vacuum bag", "tray"
         */
        record Together(int number, TradeName container) implements Pack {}

        /** Nothing was said. */
        record NotStated() implements Pack {}
    }

    /**
     * Something on the scale that is not meat.
     *
     * @param what "twine", "bag"
     * @param weight how much it weighs
     */
    public record Tare(TradeName what, Quantity weight) {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if it is no weight
         */
        public Tare {
            weight.measuring(Dimension.WEIGHT);
        }
    }
}
