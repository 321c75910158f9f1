package dev.gambrel.references.ranges;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.references.item.Scheme;
import dev.gambrel.references.source.Citation;
import java.util.List;
import java.util.Optional;

/**
 * The weight ranges of one item, from light to heavy.
 *
 * <p>Ranges that stand side by side are printed with the same limit, 6 to 8 and 8 to 10, and the print does not say which has it. The
 * rule here is ours: a range has its lower limit and not its upper, and only where no other range begins at its upper limit it has that
 * too. So a piece lies in exactly one range or in none. Weights are compared exactly, whatever their units.
 *
 * @param scheme who gives the number
 * @param number the item's number
 * @param name the item's name
 * @param ranges from light to heavy; they may touch and never overlap
 * @param note what must be known of the table; empty if nothing
 * @param citation where it stands
 */
public record RangeTable(
        Scheme scheme, String number, String name, List<PieceRange> ranges, String note, Citation citation) {
    /** The rule for a limit that two ranges share. */
    public static final String EDGE_RULE =
            "A weight that two ranges have as their limit is in the heavier. The print gives no rule; this one is ours.";

    /** Copies the ranges. */
    public RangeTable {
        ranges = List.copyOf(ranges);
    }

    /**
     * In which range a piece lies.
     *
     * @param weight what the piece weighs
     * @return the one range that it is in, or that it is in none
     */
    public Placement place(Quantity weight) {
        for (int i = ranges.size() - 1; i >= 0; i--) {
            Bounds bounds = ranges.get(i).bounds();
            if (bounds.isReachedBy(weight) && !bounds.isPassedBy(weight)) {
                return new Placement.In(
                        ranges.get(i), i > 0 && ranges.get(i - 1).bounds().endsAt(weight));
            }
        }
        return new Placement.InNone(weight);
    }

    /**
     * Whether a piece is in a range.
     *
     * @param weight what the piece weighs
     * @param range the name of a range, whatever the case
     * @return true if it lies in that one; false also where there is no such range
     */
    public boolean isIn(Quantity weight, String range) {
        return place(weight) instanceof Placement.In in && in.range().name().equalsIgnoreCase(range);
    }

    /**
     * A range by its name.
     *
     * @param range the name, whatever the case
     * @return the range with its limits, or nothing if there is none of that name
     */
    public Optional<PieceRange> range(String range) {
        return ranges.stream()
                .filter(held -> held.name().equalsIgnoreCase(range))
                .findFirst();
    }

    @Override
    public String toString() {
        return scheme.word() + " " + number + " " + name;
    }
}
