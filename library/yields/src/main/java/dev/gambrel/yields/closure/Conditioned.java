package dev.gambrel.yields.closure;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Every part has a stated spread and none takes what is left.
 *
 * <p>Let m be the part with the largest standard deviation and o the others. Their covariance is diag(d) - k d d', where
 * d_j - k d_j² = s_j² and k solves S - k S² = s_m² with S the sum of d over the others; m takes what they leave. With
 * k &gt; 0 this is independence conditioned on the sum; with k = 0 the part m is a rest; k falls to minus infinity as
 * s_m reaches the sum of the others, which then move together. Beyond that no covariance has these spreads.
 */
final class Conditioned implements Closure {
    /** Ranges give standard deviations with rounding; equality is meant to be allowed. */
    private static final double ROUNDING = 2e-9;

    private final int largest;
    private final double sign;
    private final double root;
    private final double[] diagonal;
    private final double[] along;

    /**
     * Finds k.
     *
     * @param sd the stated standard deviations, at least one of them positive
     * @throws IllegalArgumentException if one exceeds the sum of the others
     */
    Conditioned(double[] sd) {
        largest = indexOfLargest(sd);
        diagonal = new double[sd.length];
        along = new double[sd.length];
        double top = sd[largest];
        double[] s = others(sd, top);
        if (!isPossible(sd)) {
            throw new IllegalArgumentException("one spread exceeds the sum of the others");
        }
        sign = Arrays.stream(s).map(each -> each * each).sum() >= 1 ? 1 : -1;
        root = solve(s, 2 * Arrays.stream(s).max().orElse(0)) / top;
        for (int j = 0; j < s.length; j++) {
            diagonal[j] *= top * top;
            along[j] *= top;
        }
    }

    /** Whether no standard deviation exceeds the sum of the others. */
    static boolean isPossible(double[] sd) {
        double top = Arrays.stream(sd).max().orElse(0);
        return Arrays.stream(sd).sum() - top >= top * (1 - ROUNDING);
    }

    /** Finds √|k| on a scale where s_m is 1; for k &gt; 0 it is the cosine of an angle over w, for k &lt; 0 a ratio of odds. */
    private double solve(double[] s, double w) {
        DoubleUnaryOperator gap = sign > 0 ? x -> fill(s, w, Math.sqrt(1 - x * x)) : x -> fill(s, 1 - x, x);
        double x = BracketedRoot.of(gap, 0, 1);
        gap.applyAsDouble(x);
        return sign > 0 ? Math.sqrt(1 - x * x) / w : x / (1 - x);
    }

    /** Fills d and e = d √|k| for √|k| = t / w, and tells by how much S - k S² exceeds 1. */
    private double fill(double[] s, double w, double t) {
        double sumD = 0;
        double sumE = 0;
        for (int j = 0; j < s.length; j++) {
            double square = s[j] * s[j];
            double below = w + Math.sqrt(Math.max(0, w * w - sign * 4 * square * t * t));
            diagonal[j] = square == 0 ? 0 : 2 * square * w / below;
            along[j] = square == 0 ? 0 : 2 * square * t / below;
            sumD += diagonal[j];
            sumE += along[j];
        }
        return sumD - sign * sumE * sumE - 1;
    }

    private static int indexOfLargest(double[] sd) {
        int at = 0;
        for (int j = 1; j < sd.length; j++) {
            if (sd[j] > sd[at]) {
                at = j;
            }
        }
        return at;
    }

    /** The standard deviations relative to the largest, which itself is left out. */
    private double[] others(double[] sd, double top) {
        double[] s = new double[sd.length];
        for (int j = 0; j < sd.length; j++) {
            s[j] = j == largest ? 0 : sd[j] / top;
        }
        return s;
    }

    /** The scalar k, in parts of the whole to the power -2. */
    double k() {
        return sign * root * root;
    }

    @Override
    public double covariance(double[] y, double[] z, int first) {
        double sum = 0;
        double alongY = 0;
        double alongZ = 0;
        for (int j = 0; j < diagonal.length; j++) {
            double a = Closure.difference(y[first + j], y[first + largest]);
            double b = Closure.difference(z[first + j], z[first + largest]);
            sum += diagonal[j] * a * b;
            alongY += along[j] * a;
            alongZ += along[j] * b;
        }
        return sum - sign * alongY * alongZ;
    }
}
