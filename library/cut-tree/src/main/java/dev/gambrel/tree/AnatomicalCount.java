package dev.gambrel.tree;

/**
 * How many of a bone an animal of a species may have.
 *
 * @param least the fewest, 0 where not stated
 * @param most the most, 0 where not stated
 */
public record AnatomicalCount(int least, int most) {
    /** Nothing is known. */
    public static final AnatomicalCount NOT_STATED = new AnatomicalCount(0, 0);

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
