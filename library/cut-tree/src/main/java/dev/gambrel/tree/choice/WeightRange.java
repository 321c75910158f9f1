package dev.gambrel.tree.choice;

import dev.gambrel.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;

/**
 * The weights between two marks. Immutable and exact.
 *
 * @param from where it begins
 * @param to where it ends; at or before {@code from} no weight is left
 */
public record WeightRange(Mark from, Mark to) {
    /** Every weight there is. */
    public static final WeightRange ALL = new WeightRange(Mark.START, Mark.END);

    /**
     * What several limits leave.
     *
     * @param bounds limits that all hold
     * @return the weights within all of them
     */
    public static WeightRange within(List<Bound> bounds) {
        WeightRange left = ALL;
        for (Bound bound : bounds) {
            left = left.and(of(bound));
        }
        return left;
    }

    private static WeightRange of(Bound bound) {
        Quantity weight = bound.weight();
        return switch (bound.kind()) {
            case UNDER -> new WeightRange(Mark.START, new Mark.Below(weight));
            case AT_MOST -> new WeightRange(Mark.START, new Mark.Above(weight));
            case OVER -> new WeightRange(new Mark.Above(weight), Mark.END);
            case AT_LEAST -> new WeightRange(new Mark.Below(weight), Mark.END);
        };
    }

    /**
     * The weights in both.
     *
     * @param other another range
     * @return what they share, which may be nothing
     */
    public WeightRange and(WeightRange other) {
        return new WeightRange(
                from.compareTo(other.from) >= 0 ? from : other.from, to.compareTo(other.to) <= 0 ? to : other.to);
    }

    /**
     * Whether no weight is in it.
     *
     * @return true if it ends where it begins, or before
     */
    public boolean isEmpty() {
        return from.compareTo(to) >= 0;
    }

    /**
     * Whether a weight is in it, compared exactly.
     *
     * @param weight any weight
     * @return true if it lies between the two marks
     */
    public boolean holds(Quantity weight) {
        return from.compareTo(new Mark.Below(weight)) <= 0 && to.compareTo(new Mark.Above(weight)) >= 0;
    }

    /**
     * In a sentence after "is".
     *
     * @return for example "over 0.8 kg and at most 1.0 kg", "exactly 1.0 kg" or "of any weight"
     */
    @Override
    public String toString() {
        if (from instanceof Mark.Below low
                && to instanceof Mark.Above high
                && low.weight().compareTo(high.weight()) == 0) {
            return "exactly " + low.weight();
        }
        List<String> ends = new ArrayList<>(2);
        if (from instanceof Mark.Below low) {
            ends.add("at least " + low.weight());
        } else if (from instanceof Mark.Above low && from.compareTo(Mark.START) > 0) {
            ends.add("over " + low.weight());
        }
        if (to instanceof Mark.Below high) {
            ends.add("under " + high.weight());
        } else if (to instanceof Mark.Above high) {
            ends.add("at most " + high.weight());
        }
        return ends.isEmpty() ? "of any weight" : String.join(" and ", ends);
    }
}
