package dev.gambrel.tree;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.SkeletonPoint;

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
     * In free words that no rule reads.
     *
     * @param words the words
     */
    record InWords(String words) implements Landmark {}

    /** Only the tool was given. */
    record NotStated() implements Landmark {}
}
