package dev.gambrel.yields.reconciliation.pattern;

import java.util.List;

/** A mistake that people make at a scale, and the readings that it would have touched. */
public sealed interface Pattern {
    /**
     * Every weighing on one scale reads too much by the same amount, as by a tray that was not tared. The size is that amount for one
     * weighing.
     *
     * @param scale the scale's name
     * @param nodes what was weighed on it
     */
    record SameAmountEachWeighing(String scale, List<Integer> nodes) implements Pattern {
        /** Copies the list. */
        public SameAmountEachWeighing {
            nodes = List.copyOf(nodes);
        }
    }

    /**
     * Every reading of one scale is too much by the same part, as out of calibration. The size is that part: 0.02 where it shows 2 % too
     * much.
     *
     * @param scale the scale's name
     * @param nodes what was weighed on it
     */
    record SamePartOfEachWeight(String scale, List<Integer> nodes) implements Pattern {
        /** Copies the list. */
        public SamePartOfEachWeight {
            nodes = List.copyOf(nodes);
        }
    }

    /**
     * One piece of a pair was weighed and written down as both. Of known size.
     *
     * @param node what was weighed
     */
    record OneWrittenAsPair(int node) implements Pattern {}

    /**
     * What was written down as a pair is two: a doubled figure, or both pieces counted twice. Of known size.
     *
     * @param node what was weighed
     */
    record PairCountedTwice(int node) implements Pattern {}

    /**
     * Trimmed cuts were weighed before they were trimmed, and their trim was weighed again in the tub. Of known size: the trim.
     *
     * @param nodes the trimmed cuts
     * @param trims the trims that are in both
     */
    record WeighedBeforeTrimming(List<Integer> nodes, List<Integer> trims) implements Pattern {
        /** Copies the lists. */
        public WeighedBeforeTrimming {
            nodes = List.copyOf(nodes);
            trims = List.copyOf(trims);
        }
    }

    /**
     * Pounds were written down as kilograms. Of known size.
     *
     * @param nodes what was weighed so
     */
    record PoundsAsKilograms(List<Integer> nodes) implements Pattern {
        /** Copies the list. */
        public PoundsAsKilograms {
            nodes = List.copyOf(nodes);
        }
    }

    /**
     * Whether the pattern says itself how large the error is.
     *
     * @return false where the size has to be estimated from the sheet
     */
    default boolean isOfKnownSize() {
        return !(this instanceof SameAmountEachWeighing || this instanceof SamePartOfEachWeight);
    }
}
