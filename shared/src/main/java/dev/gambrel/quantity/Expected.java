package dev.gambrel.quantity;

import java.math.BigDecimal;
import java.util.OptionalDouble;

/**
 * A figure that is expected, never a limit.
 *
 * <p>Means and standard deviations are given in the unit in which the dimension is compared: per cent for a share,
 * kilograms for a weight.
 */
public sealed interface Expected {
    /** Half the width of the central 95 % of a normal distribution, in standard deviations. */
    double NORMAL_95 = 1.959963984540054;

    /**
     * The mean, exactly.
     *
     * @return per cent or kilograms
     */
    BigDecimal exactMean();

    /**
     * One standard deviation.
     *
     * @return per cent or kilograms, or nothing where no spread was written: that is not zero
     */
    OptionalDouble standardDeviation();

    /**
     * What is expected.
     *
     * @return the dimension of the mean
     */
    Dimension dimension();

    /**
     * The same figure, for a place where only one dimension has a meaning.
     *
     * @param wanted the dimension
     * @return this
     * @throws IllegalArgumentException if it measures something else
     */
    default Expected measuring(Dimension wanted) {
        if (dimension() != wanted) {
            throw new IllegalArgumentException(
                    this + " is " + dimension().words() + ", and " + wanted.words() + " is wanted");
        }
        return this;
    }

    /**
     * The nearest double to the mean.
     *
     * @return per cent or kilograms
     */
    default double mean() {
        return exactMean().doubleValue();
    }

    /**
     * A mean whose spread is not stated.
     *
     * @param value the mean
     */
    record Mean(Quantity value) implements Expected {
        @Override
        public Dimension dimension() {
            return value.dimension();
        }

        @Override
        public BigDecimal exactMean() {
            return value.common();
        }

        @Override
        public OptionalDouble standardDeviation() {
            return OptionalDouble.empty();
        }

        @Override
        public String toString() {
            return value.toString();
        }
    }

    /**
     * A mean and one standard deviation, written with ±.
     *
     * @param value the mean
     * @param deviation one standard deviation, in the same dimension
     */
    record PlusMinus(Quantity value, Quantity deviation) implements Expected {
        /**
         * Checks that both measure the same.
         *
         * @throws IllegalArgumentException if they do not
         */
        public PlusMinus {
            deviation.measuring(value.dimension());
        }

        @Override
        public Dimension dimension() {
            return value.dimension();
        }

        @Override
        public BigDecimal exactMean() {
            return value.common();
        }

        @Override
        public OptionalDouble standardDeviation() {
            return OptionalDouble.of(deviation.value());
        }

        @Override
        public String toString() {
            return value + " ± " + deviation;
        }
    }

    /**
     * The range that holds the central 95 % of a normal distribution.
     *
     * @param low its 2.5 % point
     * @param high its 97.5 % point, in the same dimension
     */
    record CentralRange(Quantity low, Quantity high) implements Expected {
        private static final BigDecimal HALF = new BigDecimal("0.5");

        /**
         * Checks that both ends measure the same.
         *
         * @throws IllegalArgumentException if they do not
         */
        public CentralRange {
            high.measuring(low.dimension());
        }

        @Override
        public Dimension dimension() {
            return low.dimension();
        }

        @Override
        public BigDecimal exactMean() {
            return low.common().add(high.common()).multiply(HALF);
        }

        @Override
        public OptionalDouble standardDeviation() {
            double width = high.common().subtract(low.common()).doubleValue();
            return OptionalDouble.of(width / (2 * NORMAL_95));
        }

        @Override
        public String toString() {
            return low + " to " + high;
        }
    }
}
