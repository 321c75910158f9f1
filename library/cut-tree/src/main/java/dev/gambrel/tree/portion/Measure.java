package dev.gambrel.tree.portion;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;

/** A plain figure that may not have been stated; not stated is never 0. */
public sealed interface Measure {
    /**
     * The same figure, for a place where only one dimension has a meaning.
     *
     * @param wanted the dimension
     * @return this
     * @throws IllegalArgumentException if it measures something else
     */
    default Measure measuring(Dimension wanted) {
        if (this instanceof Stated stated) {
            stated.value().measuring(wanted);
        }
        return this;
    }

    /**
     * A figure.
     *
     * @param value the figure
     */
    record Stated(Quantity value) implements Measure {}

    /** Nothing was said. */
    record NotStated() implements Measure {}
}
