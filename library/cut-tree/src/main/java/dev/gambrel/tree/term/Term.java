package dev.gambrel.tree.term;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;

/**
 * One term of supply. In a house's specification it is what the house undertakes, in a buyer's requirement what the buyer
 * asks for. Of a term that is not stated nothing is known; it is never taken as kept.
 */
public sealed interface Term {
    /**
     * What one piece weighs.
     *
     * @param limit the weights that are accepted
     * @param outside how many pieces may lie outside
     */
    record Weight(Limit limit, Outside outside) implements Term {
        /**
         * Checks that there is a limit, and its dimension.
         *
         * @throws IllegalArgumentException if there is no limit, or none on a weight
         */
        public Weight {
            stated(limit, Dimension.WEIGHT);
        }
    }

    /**
     * How thick one piece is.
     *
     * @param limit the thicknesses that are accepted
     * @param outside how many pieces may lie outside
     */
    record Thickness(Limit limit, Outside outside) implements Term {
        /**
         * Checks that there is a limit, and its dimension.
         *
         * @throws IllegalArgumentException if there is no limit, or none on a length
         */
        public Thickness {
            stated(limit, Dimension.LENGTH);
        }
    }

    /**
     * How lean the meat is.
     *
     * @param limit per cent lean
     * @param judged how that is found; the two ways are never mixed
     */
    record Lean(Limit limit, Judged judged) implements Term {
        /**
         * Checks that there is a limit, and its dimension.
         *
         * @throws IllegalArgumentException if there is no limit, or none on a share
         */
        public Lean {
            stated(limit, Dimension.SHARE);
        }
    }

    /**
     * Chilled or frozen.
     *
     * @param state which
     */
    record Refrigerated(Refrigeration state) implements Term {}

    /**
     * How cold it is kept.
     *
     * @param limit the temperatures that are accepted
     * @param where where it is taken, such as "the centre"; empty where nothing was said
     */
    record Temperature(Limit limit, String where) implements Term {
        /**
         * Checks that there is a limit, and its dimension.
         *
         * @throws IllegalArgumentException if there is no limit, or none on a temperature
         */
        public Temperature {
            stated(limit, Dimension.TEMPERATURE);
        }
    }

    /**
     * How long it is aged.
     *
     * @param limit the time
     * @param manner how, such as "on the bone" or "dry"; empty where nothing was said
     * @param since the event from which the time runs, such as "kill"; empty where nothing was said
     */
    record Age(Limit limit, String manner, String since) implements Term {
        /**
         * Checks that there is a limit, and its dimension.
         *
         * @throws IllegalArgumentException if there is no limit, or none on a time
         */
        public Age {
            stated(limit, Dimension.TIME);
        }
    }

    /**
     * How long it still keeps when it is delivered.
     *
     * @param limit the time
     */
    record Life(Limit limit) implements Term {
        /**
         * Checks that there is a limit, and its dimension.
         *
         * @throws IllegalArgumentException if there is no limit, or none on a time
         */
        public Life {
            stated(limit, Dimension.TIME);
        }
    }

    /**
     * What it is packed in.
     *
     * @param together how many pieces to one; 0 where nothing was said
     * @param container "vacuum bag"
     */
    record Pack(int together, TradeName container) implements Term {}

    /**
     * What is claimed of the animal or the meat. It is carried and never concluded from anything else.
     *
     * @param claim "farmed"
     */
    record Claim(TradeName claim) implements Term {}

    /**
     * What the label tells.
     *
     * @param what "lot"
     */
    record Label(TradeName what) implements Term {}

    private static void stated(Limit limit, Dimension dimension) {
        if (limit.measuring(dimension) instanceof Limit.NotStated) {
            throw new IllegalArgumentException("a term lays down a limit");
        }
    }
}
