package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * What a run asks for of one cut: that its pieces are worked in one way, or so many per cent of them in each of several.
 *
 * @param cut the cut's name, or as many of the names that lead to it as tell it from others: "leg / topside"; of the
 *     carcass the name "carcass"
 * @param ways the ways with their shares
 */
public record Order(TreePath cut, List<WayShare> ways) {
    /** Copies the list. */
    public Order {
        ways = List.copyOf(ways);
    }

    /**
     * That all pieces of a cut are worked in one way.
     *
     * @param cut the cut
     * @param way the way's name
     * @return the order
     */
    public static Order all(TreePath cut, TradeName way) {
        return new Order(cut, List.of(new WayShare(way, Quantity.of("100", Unit.PERCENT))));
    }

    /**
     * So many of the pieces in one way.
     *
     * @param way the way's name
     * @param share per cent of the pieces
     */
    public record WayShare(TradeName way, Quantity share) {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if the figure is no share
         */
        public WayShare {
            share.measuring(Dimension.SHARE);
        }
    }
}
