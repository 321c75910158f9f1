package dev.gambrel.yields.batch;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.choice.Mark;
import dev.gambrel.tree.choice.WeightRange;
import dev.gambrel.tree.estimate.ValidRange;

/**
 * A range of values in double, its ends in it. Near an end only exact figures can tell.
 *
 * @param low the least value that is in it
 * @param high the greatest
 */
record Range(double low, double high) {
    private static final double NEAR = 1e-11;

    /** A range whose ends may or may not belong to it. */
    static Range of(double low, boolean withLow, double high, boolean withHigh) {
        return new Range(withLow ? low : Math.nextUp(low), withHigh ? high : Math.nextDown(high));
    }

    static Range of(WeightRange range) {
        Mark to = range.to();
        return of(
                range.from() instanceof Mark.Beyond ? Double.POSITIVE_INFINITY : weight(range.from()),
                range.from() instanceof Mark.Below,
                to instanceof Mark.Beyond ? Double.POSITIVE_INFINITY : weight(to),
                to instanceof Mark.Above);
    }

    static Range of(ValidRange.Stated range) {
        return between(range.low(), range.high());
    }

    static Range between(Quantity low, Quantity high) {
        return new Range(low.value(), high.value());
    }

    private static double weight(Mark mark) {
        return mark instanceof Mark.Below below
                ? below.weight().value()
                : ((Mark.Above) mark).weight().value();
    }

    boolean holds(double value) {
        return value >= low & value <= high;
    }

    boolean isNearAnEnd(double value) {
        return isNear(value, low) || isNear(value, high);
    }

    private static boolean isNear(double value, double end) {
        return Math.abs(value - end) <= NEAR * Math.abs(end) && !Double.isInfinite(end);
    }

    boolean isFromTheStart() {
        return low == Math.nextUp(0.0);
    }
}
