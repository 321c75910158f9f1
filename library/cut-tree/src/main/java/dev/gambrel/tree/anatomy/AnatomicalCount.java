package dev.gambrel.tree.anatomy;

import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * How many of a bone an animal of a species may have.
 *
 * @param least the fewest, 0 where not stated
 * @param most the most, 0 where not stated
 * @param sources names of the sources that the count rests on
 */
public record AnatomicalCount(int least, int most, List<TradeName> sources) {
    /** Nothing is known. */
    public static final AnatomicalCount NOT_STATED = new AnatomicalCount(0, 0);

    /** Copies the list. */
    public AnatomicalCount {
        sources = List.copyOf(sources);
    }

    /**
     * A count that cites nothing.
     *
     * @param least the fewest
     * @param most the most
     */
    public AnatomicalCount(int least, int most) {
        this(least, most, List.of());
    }

    /**
     * Whether the count is known.
     *
     * @return false where nothing was stated
     */
    public boolean isStated() {
        return most > 0;
    }

    @Override
    public String toString() {
        return least == most ? Integer.toString(most) : least + " to " + most;
    }
}
