package dev.gambrel.tree.estimate;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;

/** What a published rule does to the result of an equation. */
public sealed interface Adjustment {
    /**
     * A result below the limit is taken as the limit.
     *
     * @param limit the least
     * @param when when this holds
     */
    record AtLeast(Quantity limit, Condition when) implements Adjustment {}

    /**
     * A result above the limit is taken as the limit.
     *
     * @param limit the most
     * @param when when this holds
     */
    record AtMost(Quantity limit, Condition when) implements Adjustment {}

    /** What stands after the decimal point, in the unit in which the result is told, is left off and never rounded. */
    record DecimalsDropped() implements Adjustment {}

    /** When an adjustment holds. */
    sealed interface Condition {
        /** For every carcass. */
        record Always() implements Condition {}

        /**
         * For a carcass that was given a score.
         *
         * @param measure the measure
         * @param word the score
         */
        record Scored(TradeName measure, TradeName word) implements Condition {}
    }
}
