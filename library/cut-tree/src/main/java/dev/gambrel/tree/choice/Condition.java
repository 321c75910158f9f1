package dev.gambrel.tree.choice;

import dev.gambrel.text.TradeName;
import java.util.List;
import java.util.stream.Collectors;

/** What must be so for a cut to be worked in one of its ways. In print it is a sentence: "a piece is under 1.0 kg". */
public sealed interface Condition {
    /**
     * What the condition is about, in a sentence.
     *
     * @return "a piece", "the carcass", or the name of a grade
     */
    String subject();

    /** Something has some weight. */
    sealed interface Weighs extends Condition {
        /**
         * The limits.
         *
         * @return limits that all hold
         */
        List<Bound> bounds();
    }

    /** A grade of the carcass has some value. */
    sealed interface Graded extends Condition {
        /**
         * The grade.
         *
         * @return its name
         */
        TradeName grade();

        /**
         * The values that are named.
         *
         * @return at least one, but for a grade that is given no value
         */
        List<TradeName> named();

        @Override
        default String subject() {
            return grade().text();
        }
    }

    /**
     * One piece of the cut, as it comes to the block, has some weight: one leg of the two.
     *
     * @param bounds limits that all hold
     */
    record PieceWeighs(List<Bound> bounds) implements Weighs {
        /** Copies the list. */
        public PieceWeighs {
            bounds = List.copyOf(bounds);
        }

        @Override
        public String subject() {
            return "a piece";
        }

        @Override
        public String toString() {
            return Condition.sentence(this);
        }
    }

    /**
     * The carcass, on the specification's own basis, has some weight.
     *
     * @param bounds limits that all hold
     */
    record CarcassWeighs(List<Bound> bounds) implements Weighs {
        /** Copies the list. */
        public CarcassWeighs {
            bounds = List.copyOf(bounds);
        }

        @Override
        public String subject() {
            return "the carcass";
        }

        @Override
        public String toString() {
            return Condition.sentence(this);
        }
    }

    /**
     * A grade of the carcass is one of some values.
     *
     * @param grade the grade's name
     * @param named any of these
     */
    record GradeIs(TradeName grade, List<TradeName> named) implements Graded {
        /** Copies the list. */
        public GradeIs {
            named = List.copyOf(named);
        }

        @Override
        public String toString() {
            return grade + " is " + named.stream().map(TradeName::text).collect(Collectors.joining(" or "));
        }
    }

    /**
     * A grade of the carcass lies from one value to another in the order in which they are declared, both included.
     *
     * @param grade the grade's name
     * @param first the first value
     * @param last the last
     */
    record GradeFrom(TradeName grade, TradeName first, TradeName last) implements Graded {
        @Override
        public List<TradeName> named() {
            return List.of(first, last);
        }

        @Override
        public String toString() {
            return grade + " is " + first + " to " + last;
        }
    }

    private static String sentence(Weighs condition) {
        String limits = condition.bounds().stream().map(Bound::toString).collect(Collectors.joining(" and "));
        return condition.subject() + " is " + (limits.isEmpty() ? WeightRange.ALL : limits);
    }
}
