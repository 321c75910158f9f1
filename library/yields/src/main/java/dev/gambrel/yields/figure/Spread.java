package dev.gambrel.yields.figure;

/** How far a figure strays from its mean. What was not stated is never taken for zero. */
public sealed interface Spread {
    /**
     * A figure.
     *
     * @param standardDeviation one standard deviation, 0 or more, in the unit of the mean
     */
    record Stated(double standardDeviation) implements Spread {
        /**
         * Checks the figure.
         *
         * @throws IllegalArgumentException if it is less than 0 or not a number
         */
        public Stated {
            if (!(standardDeviation >= 0)) {
                throw new IllegalArgumentException("a standard deviation is 0 or more, not " + standardDeviation);
            }
        }
    }

    /** The specification does not say enough to know it. */
    record NotStated() implements Spread {}

    /** Exactly known. */
    Spread NONE = new Stated(0);

    /** Nobody has said. */
    Spread NOT_STATED = new NotStated();

    /**
     * The spread of a known variance.
     *
     * @param variance the square of the standard deviation; not a number where it is not stated
     * @return the spread
     * @throws IllegalArgumentException if the variance is less than 0
     */
    static Spread ofVariance(double variance) {
        return Double.isNaN(variance) ? NOT_STATED : new Stated(Math.sqrt(variance));
    }

    /**
     * The variance, for arithmetic that carries "not stated" along as not-a-number.
     *
     * @return the square of the standard deviation, or NaN where it is not stated
     */
    default double variance() {
        return this instanceof Stated s ? s.standardDeviation() * s.standardDeviation() : Double.NaN;
    }
}
