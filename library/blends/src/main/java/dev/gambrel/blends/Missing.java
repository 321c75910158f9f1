package dev.gambrel.blends;

import java.util.OptionalDouble;

/**
 * What would use up all that is there.
 *
 * @param edge the per cent lean that the whole has to come to
 * @param points by how much the whole misses it, in kilograms times points of lean: more than 0 where it is too fat, less where
 *     it is too lean, 0 where nothing is missing
 */
public record Missing(double edge, double points) {
    /**
     * Whether nothing is missing.
     *
     * @return true if all that is there goes in
     */
    public boolean isNothing() {
        return points == 0;
    }

    /**
     * How much of another lot would use up all that is there: y (g - t) = points.
     *
     * @param percent how lean the other lot is, per cent
     * @return kilograms, or nothing where no amount of it would do
     */
    public OptionalDouble kilogramsOf(double percent) {
        double kilograms = points / (percent - edge);
        return kilograms >= 0 && kilograms < Double.POSITIVE_INFINITY
                ? OptionalDouble.of(kilograms)
                : OptionalDouble.empty();
    }
}
