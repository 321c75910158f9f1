package dev.gambrel.yields.batch;

/**
 * A sum that comes out the same in whatever order it is added up.
 *
 * <p>Every summand is taken to the nearest 2⁻⁵² and added as a whole number, which loses nothing. Summands are at most 2⁶² in
 * magnitude, and so is what they come to; the error is at most 2⁻⁵³ for each.
 */
final class ExactSum {
    private static final double PARTS = 0x1p52;
    private static final long ONE = 1L << 52;

    private long whole;
    private long parts;

    void add(double summand) {
        long truncated = (long) summand;
        add(truncated, Math.round((summand - truncated) * PARTS));
    }

    void add(ExactSum other) {
        add(other.whole, other.parts);
    }

    private void add(long otherWhole, long otherParts) {
        long sum = parts + otherParts;
        long carry = Math.floorDiv(sum, ONE);
        whole += otherWhole + carry;
        parts = sum - carry * ONE;
    }

    double value() {
        return whole + parts / PARTS;
    }
}
