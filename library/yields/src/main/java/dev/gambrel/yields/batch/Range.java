package dev.gambrel.yields.batch;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.choice.Mark;
import dev.gambrel.tree.choice.WeightRange;
import dev.gambrel.tree.estimate.ValidRange;

/** A range of values in double, whose ends may or may not belong to it. Near an end only exact figures can tell. */
record Range(double low, boolean withLow, double high, boolean withHigh) {
    private static final double NEAR = 1e-11;

    static Range of(WeightRange range) {
        Mark to = range.to();
        return new Range(
                range.from() instanceof Mark.Beyond ? Double.POSITIVE_INFINITY : weight(range.from()),
                range.from() instanceof Mark.Below,
                to instanceof Mark.Beyond ? Double.POSITIVE_INFINITY : weight(to),
                to instanceof Mark.Above);
    }

    static Range of(ValidRange.Stated range) {
        return between(range.low(), range.high());
    }

    static Range between(Quantity low, Quantity high) {
        return new Range(low.value(), true, high.value(), true);
    }

    private static double weight(Mark mark) {
        return mark instanceof Mark.Below below
                ? below.weight().value()
                : ((Mark.Above) mark).weight().value();
    }

    boolean holds(double value) {
        return (withLow ? value >= low : value > low) && (withHigh ? value <= high : value < high);
    }

    boolean isNearAnEnd(double value) {
        return isNear(value, low) || isNear(value, high);
    }

    private static boolean isNear(double value, double end) {
        return Math.abs(value - end) <= NEAR * Math.abs(end) && !Double.isInfinite(end);
    }

    boolean isFromTheStart() {
        return low == 0 && !withLow;
    }
}
