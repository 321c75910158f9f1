package dev.gambrel.yields.control;

import java.util.Optional;

/** A covariance as LL', L lower triangular. */
final class Cholesky {
    /** Log-ratios that stray by less than a millionth of a millionth stray by nothing but rounding. */
    private static final double ROUNDING = 1e-24;

    /** A pivot smaller than this part of its variance is nothing but rounding. */
    private static final double NOTHING = 1e-10;

    private final double[][] lower;

    private Cholesky(double[][] lower) {
        this.lower = lower;
    }

    /** Nothing where some combination does not vary. */
    static Optional<Cholesky> of(double[][] covariance) {
        int size = covariance.length;
        double[][] lower = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                double left = covariance[i][j];
                for (int k = 0; k < j; k++) {
                    left -= lower[i][k] * lower[j][k];
                }
                if (i == j && !(left > Math.max(ROUNDING, NOTHING * covariance[i][i]))) {
                    return Optional.empty();
                }
                lower[i][j] = i == j ? Math.sqrt(left) : left / lower[j][j];
            }
        }
        return Optional.of(new Cholesky(lower));
    }

    /** v'C⁻¹v. */
    double squaredLength(double[] vector) {
        double[] solved = new double[vector.length];
        double sum = 0;
        for (int i = 0; i < vector.length; i++) {
            double left = vector[i];
            for (int k = 0; k < i; k++) {
                left -= lower[i][k] * solved[k];
            }
            solved[i] = left / lower[i][i];
            sum += solved[i] * solved[i];
        }
        return sum;
    }
}
