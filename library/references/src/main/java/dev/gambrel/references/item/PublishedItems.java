package dev.gambrel.references.item;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What published numbers mean. The tables are no complete copy of any publication: what was not found in a source that may be
 * carried over is not in them, and a number that is not held is unknown, never wrong.
 */
public final class PublishedItems {
    private static final List<Item> ALL = Stream.of(
                    UneceBeef.ITEMS, UneceOthers.ITEMS, ImpsItems.ITEMS, HandbookItems.ITEMS)
            .flatMap(List::stream)
            .toList();

    private PublishedItems() {}

    /**
     * Every item.
     *
     * @return in the order of the tables
     */
    public static List<Item> all() {
        return ALL;
    }

    /**
     * What a number means, of whatever animal.
     *
     * @param reference scheme, number and edition
     * @return its meaning
     */
    public static Meaning lookUp(Reference reference) {
        return lookUp(reference, item -> true);
    }

    /**
     * What a number means of one animal.
     *
     * @param reference scheme, number and edition
     * @param animal the animal
     * @return its meaning; a number of another animal is unknown
     */
    public static Meaning lookUp(Reference reference, Animal animal) {
        return lookUp(reference, item -> item.animal() == animal);
    }

    private static Meaning lookUp(Reference reference, Predicate<Item> which) {
        List<Item> held = held(reference, which);
        List<Item> meant = held.stream().filter(reference::means).toList();
        if (held.isEmpty()) {
            return new Meaning.Unknown(reference);
        } else if (meant.isEmpty()) {
            return new Meaning.OtherEdition(held);
        }
        return meant.size() == 1 ? new Meaning.Known(meant.get(0)) : new Meaning.Several(meant);
    }

    /** A number that is printed by itself is not one of a run. */
    private static List<Item> held(Reference reference, Predicate<Item> which) {
        List<Item> all = ALL.stream()
                .filter(item -> item.scheme() == reference.scheme())
                .filter(item -> item.numbers().holds(reference.number()))
                .filter(which)
                .toList();
        List<Item> alone =
                all.stream().filter(item -> item.numbers().isSingle()).toList();
        return alone.isEmpty() ? all : alone;
    }
}
