package dev.gambrel.tree;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * What is lost between two weighings of one carcass.
 *
 * @param from the earlier basis
 * @param to the later basis
 * @param loss what the loss is called
 * @param share how much, in per cent of the earlier weight
 * @param hanging what is lost day by day after that, before the later weighing
 * @param sources names of the sources that the shares rest on
 */
public record BasisStep(
        Basis from, Basis to, TradeName loss, Expected share, Hanging hanging, List<TradeName> sources) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if the figure is no share
     */
    public BasisStep {
        share.measuring(Dimension.SHARE);
        sources = List.copyOf(sources);
    }

    /**
     * A step whose share cites nothing, with nothing lost day by day.
     *
     * @param from the earlier basis
     * @param to the later basis
     * @param loss what the loss is called
     * @param share how much, in per cent of the earlier weight
     */
    public BasisStep(Basis from, Basis to, TradeName loss, Expected share) {
        this(from, to, loss, share, new Hanging.NotStated(), List.of());
    }

    /**
     * Every share that the step states.
     *
     * @return what is lost at once and, where that is stated, what is lost each day
     */
    public List<Expected> shares() {
        return hanging instanceof Hanging.Daily daily ? List.of(share, daily.perDay()) : List.of(share);
    }

    /** What a carcass loses while it hangs. */
    public sealed interface Hanging {
        /** The most days that are taken. */
        int MOST_DAYS = 999;

        /**
         * A loss each day, of what that day began with.
         *
         * @param perDay per cent of the day's first weight
         * @param days how many days, from 1 to {@value #MOST_DAYS}
         */
        record Daily(Expected perDay, int days) implements Hanging {
            /**
             * Checks the dimension and the days.
             *
             * @throws IllegalArgumentException if the figure is no share, or the days are out of range
             */
            public Daily {
                perDay.measuring(Dimension.SHARE);
                if (days < 1 || days > MOST_DAYS) {
                    throw new IllegalArgumentException("not a number of days: " + days);
                }
            }
        }

        /** Nothing was said. */
        record NotStated() implements Hanging {}
    }
}
