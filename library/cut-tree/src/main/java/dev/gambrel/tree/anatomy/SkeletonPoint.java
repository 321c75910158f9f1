package dev.gambrel.tree.anatomy;

/** A bone of the trunk by its number, counted from the head. */
public sealed interface SkeletonPoint {
    /**
     * A rib.
     *
     * @param number from 1
     */
    record Rib(int number) implements SkeletonPoint {
        @Override
        public String toString() {
            return "rib " + number;
        }
    }

    /** The rib furthest from the head. */
    record LastRib() implements SkeletonPoint {
        @Override
        public String toString() {
            return "last rib";
        }
    }

    /**
     * A vertebra.
     *
     * @param region which part of the spine
     * @param number from 1 within the region
     */
    record Vertebra(SpineRegion region, int number) implements SkeletonPoint {
        @Override
        public String toString() {
            return region.words() + " vertebra " + number;
        }
    }

    /**
     * The vertebra of a region nearest the tail.
     *
     * @param region which part of the spine
     */
    record LastVertebra(SpineRegion region) implements SkeletonPoint {
        @Override
        public String toString() {
            return "last " + region.words() + " vertebra";
        }
    }
}
