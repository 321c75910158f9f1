package dev.gambrel.tree.portion;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import java.util.Optional;

/** How large a portion is meant to be. */
public sealed interface Aim {
    /**
     * The weight aimed at.
     *
     * @return the weight, or nothing where it follows from the thickness or the number
     */
    default Optional<Expected> targetWeight() {
        return Optional.empty();
    }

    /**
     * The thickness aimed at.
     *
     * @return the thickness, or nothing where none was said
     */
    default Optional<Expected> targetThickness() {
        return Optional.empty();
    }

    /**
     * So heavy.
     *
     * @param weight the weight aimed at, with the spread of cutting where stated
     */
    record Weight(Expected weight) implements Aim {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if it is no weight
         */
        public Weight {
            weight.measuring(Dimension.WEIGHT);
        }

        @Override
        public Optional<Expected> targetWeight() {
            return Optional.of(weight);
        }
    }

    /**
     * So thick.
     *
     * @param thickness the thickness aimed at
     */
    record Thickness(Expected thickness) implements Aim {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if it is no length
         */
        public Thickness {
            thickness.measuring(Dimension.LENGTH);
        }

        @Override
        public Optional<Expected> targetThickness() {
            return Optional.of(thickness);
        }
    }

    /**
     * So heavy and so thick; which of them rules is said with what is accepted.
     *
     * @param weight the weight aimed at
     * @param thickness the thickness aimed at
     */
    record WeightAndThickness(Expected weight, Expected thickness) implements Aim {
        /**
         * Checks the dimensions.
         *
         * @throws IllegalArgumentException if the first is no weight or the second no length
         */
        public WeightAndThickness {
            weight.measuring(Dimension.WEIGHT);
            thickness.measuring(Dimension.LENGTH);
        }

        @Override
        public Optional<Expected> targetWeight() {
            return Optional.of(weight);
        }

        @Override
        public Optional<Expected> targetThickness() {
            return Optional.of(thickness);
        }
    }

    /**
     * The piece divided into so many, as equal as may be.
     *
     * @param number how many from one piece
     */
    record Number(int number) implements Aim {}

    /** Nothing is aimed at: only limits are laid down, as a buyer does, who leaves the aim to the house. */
    record Open() implements Aim {}
}
