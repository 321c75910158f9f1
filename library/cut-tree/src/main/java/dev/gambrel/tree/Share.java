package dev.gambrel.tree;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.text.TradeName;
import java.util.List;

/** How much of the weight that enters a cut leaves in one part. A share of a pair covers both pieces. */
public sealed interface Share {
    /**
     * A figure.
     *
     * @param expected per cent of the cut above
     * @param others the same part as a share of something further up, to be checked against the first
     * @param sources names of the sources that the figure rests on
     */
    record Stated(Expected expected, List<Derived> others, List<TradeName> sources) implements Share {
        /**
         * Copies the lists.
         *
         * @throws IllegalArgumentException if the figure is no share
         */
        public Stated {
            expected.measuring(Dimension.SHARE);
            others = List.copyOf(others);
            sources = List.copyOf(sources);
        }

        /**
         * A figure with nothing beside it.
         *
         * @param expected per cent of the cut above
         */
        public Stated(Expected expected) {
            this(expected, List.of(), List.of());
        }
    }

    /**
     * What an equation gives for the carcass in hand. It is known only once the carcass has been measured.
     *
     * @param equation the name of the estimate
     */
    record Estimated(TradeName equation) implements Share {}

    /** No figure was written. That is not zero. */
    record NotStated() implements Share {}

    /**
     * A share of something other than the cut above.
     *
     * @param expected per cent
     * @param of "carcass" or the name of a cut further up
     */
    record Derived(Expected expected, TradeName of) {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if the figure is no share
         */
        public Derived {
            expected.measuring(Dimension.SHARE);
        }
    }
}
