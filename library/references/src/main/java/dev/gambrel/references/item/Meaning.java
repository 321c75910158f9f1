package dev.gambrel.references.item;

import java.util.List;

/** What is held of a number that somebody refers to. */
public sealed interface Meaning {
    /**
     * One meaning.
     *
     * @param item what it means
     */
    record Known(Item item) implements Meaning {}

    /**
     * Several, since editions or animals differ: ask which is meant.
     *
     * @param items at least two, in the order of the tables
     */
    record Several(List<Item> items) implements Meaning {
        /** Copies the list. */
        public Several {
            items = List.copyOf(items);
        }
    }

    /**
     * The number is held, but not from the edition that was named. What it means there may differ.
     *
     * @param items what it means in other editions
     */
    record OtherEdition(List<Item> items) implements Meaning {
        /** Copies the list. */
        public OtherEdition {
            items = List.copyOf(items);
        }
    }

    /**
     * The tables do not have it. It may stand in print all the same.
     *
     * @param reference what was asked for
     */
    record Unknown(Reference reference) implements Meaning {}
}
