package dev.gambrel.yields.plan;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Home;

/**
 * One line of the plan.
 *
 * @param kind what it is
 * @param name what to call it in print
 * @param path its address in the tree
 * @param above the index of the cut above, -1 for what was weighed
 * @param level how deep, 0 for what was weighed
 * @param pieces how many to a carcass
 * @param home where it goes if nothing more is taken from it
 */
public record Node(Kind kind, String name, TreePath path, int above, int level, Pieces pieces, Home home) {
    /**
     * What to call it where it stands alone.
     *
     * @return its address, and whether it is trimmed, such as "leg / topside, trimmed"; for the carcass "carcass, cold"
     */
    public String address() {
        String address = path.names().isEmpty() ? name : path.toString();
        return kind == Kind.TRIMMED ? address + ", trimmed" : address;
    }

    /**
     * How many pieces a carcass gives.
     *
     * @param whole the pieces of the animal, 1 or 2
     * @param worked how many of them are worked in this way, as a part of 1
     */
    public record Pieces(int whole, double worked) {
        /** What there is one of. */
        public static final Pieces ONE = new Pieces(1, 1);

        /**
         * How many are expected to be worked in this way.
         *
         * @return the pieces, such as 1.4 of 2
         */
        public double expected() {
            return whole * worked;
        }
    }
}
