package dev.gambrel.yields.closure;

/**
 * One part takes what the others leave, and the others are independent.
 *
 * @param closing which part takes what is left
 * @param sd the standard deviations of the shares, NaN where not stated; the closing part's own is not read
 */
record ClosedByOne(int closing, double[] sd) implements Closure {
    @Override
    public double covariance(double[] y, double[] z, int first) {
        double sum = 0;
        for (int j = 0; j < sd.length; j++) {
            double a = Closure.difference(y[first + j], y[first + closing]);
            double b = Closure.difference(z[first + j], z[first + closing]);
            if (a != 0 && b != 0) {
                sum += a * b * sd[j] * sd[j];
            }
        }
        return sum;
    }
}
