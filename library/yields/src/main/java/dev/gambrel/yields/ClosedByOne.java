package dev.gambrel.yields;

/**
 * One part takes what the others leave, and the others are independent.
 *
 * @param closing which part takes what is left
 * @param sd the standard deviations of the shares, NaN where not stated; the closing part's own is not read
 */
record ClosedByOne(int closing, double[] sd) implements Closure {
    @Override
    public double variance(double[] y, int first) {
        double sum = 0;
        for (int j = 0; j < sd.length; j++) {
            double z = j == closing ? 0 : Closure.difference(y[first + j], y[first + closing]);
            if (z != 0) {
                sum += z * z * sd[j] * sd[j];
            }
        }
        return sum;
    }
}
