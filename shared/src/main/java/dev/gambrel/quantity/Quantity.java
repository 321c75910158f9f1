package dev.gambrel.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;

/**
 * An exact decimal amount with its unit, kept as written: 33.0 % stays 33.0 %.
 *
 * <p>Equality is equality of the writing; {@link #compareTo} compares what is meant, so 1 kg and 1000 g compare as
 * equal. Comparison is exact; nothing is rounded.
 *
 * @param amount at most {@value #MAX_DIGITS} digits, exponent within ±{@value #MAX_EXPONENT}
 * @param unit the unit as written
 */
public record Quantity(BigDecimal amount, Unit unit) implements Comparable<Quantity> {
    /** The most digits that a number may have. */
    public static final int MAX_DIGITS = 34;

    /** The largest power of ten, up or down, that a number may carry. */
    public static final int MAX_EXPONENT = 9_999;

    /**
     * Checks the size of the number.
     *
     * @throws IllegalArgumentException if {@link #isAcceptable} says no
     */
    public Quantity {
        Objects.requireNonNull(unit);
        if (!isAcceptable(amount)) {
            throw new IllegalArgumentException("number too long");
        }
    }

    /**
     * A quantity from its written number.
     *
     * @param amount digits with at most one point
     * @param unit the unit
     * @return the quantity
     * @throws NumberFormatException if the text is not a number
     */
    public static Quantity of(String amount, Unit unit) {
        return new Quantity(new BigDecimal(amount), unit);
    }

    /**
     * Whether a number is within the limits.
     *
     * @param amount any decimal
     * @return true if it has at most {@value #MAX_DIGITS} digits and an exponent within ±{@value #MAX_EXPONENT}
     */
    public static boolean isAcceptable(BigDecimal amount) {
        return amount.precision() <= MAX_DIGITS && Math.abs((long) amount.scale()) <= MAX_EXPONENT;
    }

    /**
     * What is measured.
     *
     * @return the dimension of the unit
     */
    public Dimension dimension() {
        return unit.dimension();
    }

    /**
     * The same quantity, for a place where only one dimension has a meaning.
     *
     * @param wanted the dimension
     * @return this
     * @throws IllegalArgumentException if it measures something else
     */
    public Quantity measuring(Dimension wanted) {
        if (dimension() != wanted) {
            throw new IllegalArgumentException(
                    this + " is " + dimension().words() + ", and " + wanted.words() + " is wanted");
        }
        return this;
    }

    /**
     * The amount in the unit in which its dimension is compared, exactly.
     *
     * @return kilograms, millimetres, square millimetres, per cent, ninths of a degree Celsius, hours, or a plain number
     */
    public BigDecimal common() {
        return unit.toCommon(amount);
    }

    /**
     * The nearest double to {@link #common()}, for the maths.
     *
     * @return the amount in the unit of comparison, relative error at most 2⁻⁵³
     */
    public double value() {
        return common().doubleValue();
    }

    /**
     * Compares what is meant, whatever the units.
     *
     * @param other a quantity of the same dimension
     * @return negative, zero or positive
     * @throws IllegalArgumentException if the dimensions differ
     */
    @Override
    public int compareTo(Quantity other) {
        if (dimension() != other.dimension()) {
            throw new IllegalArgumentException(dimension().words() + " cannot be compared with "
                    + other.dimension().words());
        }
        return common().compareTo(other.common());
    }

    /**
     * A worked-out amount, which may have more digits than a written one, as a quantity to be shown.
     *
     * @param amount any decimal
     * @param unit its unit
     * @return the amount rounded to {@value #MAX_DIGITS} digits; one too large or too small to be held is shown as the
     *     largest or as 0
     */
    public static Quantity rounded(BigDecimal amount, Unit unit) {
        BigDecimal short34 = amount.round(MathContext.DECIMAL128);
        if (isAcceptable(short34)) {
            return new Quantity(short34, unit);
        }
        BigDecimal edge = short34.scale() > 0 ? BigDecimal.ZERO : BigDecimal.ONE.scaleByPowerOfTen(MAX_EXPONENT);
        return new Quantity(short34.signum() < 0 ? edge.negate() : edge, unit);
    }

    /**
     * The quantity as a person writes it.
     *
     * @return for example "33.0 %"; very large and very small amounts with a power of ten
     */
    @Override
    public String toString() {
        boolean plain = amount.scale() <= 2 * MAX_DIGITS && amount.scale() >= -MAX_DIGITS;
        String figure = plain ? amount.toPlainString() : amount.toString();
        return unit == Unit.NUMBER ? figure : figure + " " + unit.symbol();
    }
}
