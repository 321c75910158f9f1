package dev.gambrel.yields.closure;

import java.util.function.DoubleUnaryOperator;

/**
 * Where a function that rises through 0 does so.
 *
 * <p>Ridders' method, which never leaves the bracket and doubles the digits at each step (C. Ridders, "A new algorithm for
 * computing a single root of a real continuous function", IEEE Transactions on Circuits and Systems 26, 1979).
 */
final class BracketedRoot {
    private static final int MOST_STEPS = 100;
    /** As near to 0 as a function of values near 1 can be told to be. */
    private static final double NEAR = 1e-15;

    private BracketedRoot() {}

    /** The root between two points; an end itself where the function does not change sign. */
    static double of(DoubleUnaryOperator f, double from, double to) {
        double low = from;
        double high = to;
        double fLow = f.applyAsDouble(low);
        double fHigh = f.applyAsDouble(high);
        if (fLow >= 0) {
            return low;
        }
        for (int step = 0; step < MOST_STEPS && fHigh > 0; step++) {
            double middle = low + (high - low) / 2;
            double fMiddle = f.applyAsDouble(middle);
            double x = middle - (middle - low) * fMiddle / Math.sqrt(fMiddle * fMiddle - fLow * fHigh);
            double fx = f.applyAsDouble(x);
            if (Math.abs(fx) <= NEAR || high - low <= Math.ulp(high)) {
                return x;
            }
            if (fMiddle < 0) {
                low = middle;
                fLow = fMiddle;
            } else {
                high = middle;
                fHigh = fMiddle;
            }
            if (fx < 0 && x > low) {
                low = x;
                fLow = fx;
            } else if (fx > 0 && x < high) {
                high = x;
                fHigh = fx;
            }
        }
        return high;
    }
}
