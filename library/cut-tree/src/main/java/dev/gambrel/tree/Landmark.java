package dev.gambrel.tree;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import java.util.List;

/** Where a cut is made. */
public sealed interface Landmark {
    /**
     * Between two points of the skeleton.
     *
     * @param first one side of the knife
     * @param second the other
     */
    record Between(SkeletonPoint first, SkeletonPoint second) implements Landmark {}

    /**
     * From one rib to another, both kept.
     *
     * @param first the rib nearest the head
     * @param last the rib furthest from it
     */
    record Ribs(int first, int last) implements Landmark {}

    /**
     * At a joint or other named place.
     *
     * @param place as written: "the stifle joint"
     */
    record At(TradeName place) implements Landmark {}

    /**
     * Along a seam or a line.
     *
     * @param line as written
     */
    record Along(TradeName line) implements Landmark {}

    /**
     * At a distance: one all along, or one at each end with a straight line between.
     *
     * @param ends one distance, or two
     */
    record AtDistance(List<End> ends) implements Landmark {
        /** Copies the list. */
        public AtDistance {
            ends = List.copyOf(ends);
        }
    }

    /**
     * How far from something the cut is made.
     *
     * @param distance a length
     * @param atMost whether it is a limit, itself accepted, and not the distance itself
     * @param from what it is measured from: "the eye"
     * @param at at which end: "the rib end"; empty where it is the same all along
     */
    record End(Quantity distance, boolean atMost, TradeName from, String at) {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if the distance is no length
         */
        public End {
            distance.measuring(Dimension.LENGTH);
        }
    }

    /**
     * Parallel to a line.
     *
     * @param line as written
     */
    record ParallelTo(TradeName line) implements Landmark {}

    /**
     * At right angles to a line.
     *
     * @param line as written
     */
    record RightAnglesTo(TradeName line) implements Landmark {}

    /**
     * In free words that no rule reads.
     *
     * @param words the words
     */
    record InWords(String words) implements Landmark {}

    /** Only the tool was given. */
    record NotStated() implements Landmark {}
}
