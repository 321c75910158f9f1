package dev.gambrel.blends;

/** What one point of lean more, or less, is worth in a batch: its shadow price. */
public sealed interface PointOfLean {
    /**
     * A figure.
     *
     * @param money what a kilogram of the batch costs more for each point; less than 0 where it costs less
     */
    record Costs(double money) implements PointOfLean {}

    /** The tubs have no prices. */
    record NoPrices() implements PointOfLean {}

    /** The batch can be no leaner, or no fatter. */
    record NotPossible() implements PointOfLean {}
}
