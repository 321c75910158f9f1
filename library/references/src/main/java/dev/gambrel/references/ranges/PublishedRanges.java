package dev.gambrel.references.ranges;

import dev.gambrel.references.item.Reference;
import dev.gambrel.references.item.Scheme;
import java.util.List;
import java.util.stream.Stream;

/** All weight ranges that are held. Editions differ: where several print an item, all of them are given. */
public final class PublishedRanges {
    private static final List<RangeTable> ALL = Stream.of(
                    ImpsBeefRanges.TABLES, ImpsOtherRanges.TABLES, AustralianGuide.PIECES)
            .flatMap(List::stream)
            .toList();

    private PublishedRanges() {}

    /**
     * Every table.
     *
     * @return in the order in which they are held
     */
    public static List<RangeTable> all() {
        return ALL;
    }

    /**
     * The ranges of an item.
     *
     * @param reference scheme, number and edition; an empty edition takes all
     * @return a table for each edition that is held; none where nothing is
     */
    public static List<RangeTable> of(Reference reference) {
        return ALL.stream()
                .filter(table -> table.scheme() == reference.scheme())
                .filter(table -> table.number().equalsIgnoreCase(reference.number()))
                .filter(table -> reference.edition().isEmpty()
                        || table.citation().edition().equalsIgnoreCase(reference.edition()))
                .toList();
    }

    /**
     * Whether any edition has ranges of a number.
     *
     * @param scheme who gives the number
     * @param number the number
     * @return true if so
     */
    public static boolean has(Scheme scheme, String number) {
        return !of(Reference.of(scheme, number)).isEmpty();
    }
}
