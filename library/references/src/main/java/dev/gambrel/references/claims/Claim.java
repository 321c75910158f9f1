package dev.gambrel.references.claims;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.references.item.Animal;
import dev.gambrel.references.item.BoneState;
import dev.gambrel.references.unece.Packing;
import dev.gambrel.references.unece.Refrigeration;

/** One thing that words say of a piece. */
public sealed interface Claim {
    /**
     * Of which animal it is.
     *
     * @param animal the animal
     */
    record OfAnimal(Animal animal) implements Claim {
        @Override
        public String toString() {
            return animal.word();
        }
    }

    /**
     * Whether it has its bone.
     *
     * @param state bone in or boneless
     */
    record Bone(BoneState state) implements Claim {
        @Override
        public String toString() {
            return state.words();
        }
    }

    /**
     * How cold it is kept.
     *
     * @param state chilled, frozen or deep-frozen
     */
    record Kept(Refrigeration state) implements Claim {
        @Override
        public String toString() {
            return state.words();
        }
    }

    /**
     * How it is packed.
     *
     * @param packing the packing
     */
    record Packed(Packing packing) implements Claim {
        @Override
        public String toString() {
            return packing.words();
        }
    }

    /**
     * The most fat at any point.
     *
     * @param limit a length
     */
    record FatAtAnyPoint(Quantity limit) implements Claim {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if it is no length
         */
        public FatAtAnyPoint {
            limit.measuring(Dimension.LENGTH);
        }

        @Override
        public String toString() {
            return "at most " + limit + " of fat at any point";
        }
    }

    /**
     * The most fat on average.
     *
     * @param limit a length
     */
    record AverageFat(Quantity limit) implements Claim {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if it is no length
         */
        public AverageFat {
            limit.measuring(Dimension.LENGTH);
        }

        @Override
        public String toString() {
            return "at most " + limit + " of fat on average";
        }
    }

    /**
     * What a piece may weigh.
     *
     * @param from the least
     * @param to the most, not below {@code from}
     */
    record PieceWeight(Quantity from, Quantity to) implements Claim {
        /**
         * Checks dimension and order.
         *
         * @throws IllegalArgumentException if they are no weights or the least is above the most
         */
        public PieceWeight {
            if (from.measuring(Dimension.WEIGHT).compareTo(to.measuring(Dimension.WEIGHT)) > 0) {
                throw new IllegalArgumentException("not a range: " + from + " to " + to);
            }
        }

        @Override
        public String toString() {
            return from + " to " + to;
        }
    }
}
