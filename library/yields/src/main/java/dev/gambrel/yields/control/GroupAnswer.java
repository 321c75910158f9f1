package dev.gambrel.yields.control;

import java.util.List;

/** Whether groups of tests can be compared. */
public sealed interface GroupAnswer permits GroupComparison, GroupAnswer.TooFew, GroupAnswer.NeverVaries {
    /**
     * Fewer than two groups have two tests or more.
     *
     * @param groups the names of those that have
     */
    record TooFew(List<String> groups) implements GroupAnswer {
        /** Copies the list. */
        public TooFew {
            groups = List.copyOf(groups);
        }
    }

    /** Within each group all figures are the same. Real weights stray: ask where they come from. */
    record NeverVaries() implements GroupAnswer {}
}
