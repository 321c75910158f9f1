package dev.gambrel.yields.estimate;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * A fraction of whole numbers in lowest terms, the denominator above 0. All arithmetic is exact: a grade that lies on its
 * boundary in inches lies on it in millimetres.
 */
record Fraction(BigInteger top, BigInteger bottom) implements Comparable<Fraction> {
    static final Fraction ZERO = new Fraction(BigInteger.ZERO, BigInteger.ONE);
    static final Fraction ONE = new Fraction(BigInteger.ONE, BigInteger.ONE);

    private static final int LONGEST_BITS = 1 << 13;

    /** Takes a decimal as it is. */
    static Fraction of(BigDecimal decimal) {
        BigInteger power = BigInteger.TEN.pow(Math.abs(decimal.scale()));
        return decimal.scale() >= 0
                ? reduced(decimal.unscaledValue(), power)
                : new Fraction(decimal.unscaledValue().multiply(power), BigInteger.ONE);
    }

    private static Fraction reduced(BigInteger top, BigInteger bottom) {
        BigInteger common = top.gcd(bottom);
        BigInteger signed = bottom.signum() < 0 ? common.negate() : common;
        return new Fraction(top.divide(signed), bottom.divide(signed));
    }

    boolean isNothing() {
        return top.signum() == 0;
    }

    /** Whether so many digits have come together that work with them should stop. */
    boolean isTooLong() {
        return top.bitLength() > LONGEST_BITS || bottom.bitLength() > LONGEST_BITS;
    }

    Fraction plus(Fraction other) {
        return reduced(top.multiply(other.bottom).add(other.top.multiply(bottom)), bottom.multiply(other.bottom));
    }

    Fraction times(Fraction other) {
        return reduced(top.multiply(other.top), bottom.multiply(other.bottom));
    }

    Fraction negative() {
        return new Fraction(top.negate(), bottom);
    }

    /** One over it, which must not be nothing. */
    Fraction inverse() {
        return reduced(bottom, top);
    }

    /** The whole number next to it on the side of 0. */
    Fraction whole() {
        return new Fraction(top.divide(bottom), BigInteger.ONE);
    }

    /** The decimal if it has at most 34 digits, or else the nearest of 34 digits. */
    BigDecimal decimal() {
        BigDecimal rounded = new BigDecimal(top).divide(new BigDecimal(bottom), MathContext.DECIMAL128);
        BigDecimal plain = rounded.stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }

    @Override
    public int compareTo(Fraction other) {
        return top.multiply(other.bottom).compareTo(other.top.multiply(bottom));
    }
}
