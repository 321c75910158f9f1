package dev.gambrel.yields.comparison;

import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Quantity;
import java.util.List;

/** What one of two specifications says where they differ. */
public sealed interface Said {
    /**
     * Where in its tree.
     *
     * @return the place of what is said; of what is not said, the place of what it would have been said of
     */
    Place.InTree place();

    /**
     * Something.
     *
     * @param place where
     * @param words for people, as written; they may hold any character that the specification holds
     * @param quantities the figures in it, exactly as written
     */
    record Stated(Place.InTree place, String words, List<Quantity> quantities) implements Said {
        /** Copies the list. */
        public Stated {
            quantities = List.copyOf(quantities);
        }
    }

    /**
     * This is not said of it.
     *
     * @param place the place of what it would have been said of
     */
    record NotStated(Place.InTree place) implements Said {}

    /**
     * The thing itself is not there.
     *
     * @param place the place of what it would stand in
     */
    record NotThere(Place.InTree place) implements Said {}
}
