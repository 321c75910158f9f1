package dev.gambrel.yields;

/**
 * Some parts have no stated spread and none takes what is left. Then only a figure that tells at most one stated part
 * from all the others has a known variance.
 *
 * @param open one part whose spread is not stated
 * @param sd the standard deviations of the shares, NaN where not stated
 */
record PartlyStated(int open, double[] sd) implements Closure {
    @Override
    public double variance(double[] y, int first) {
        double sum = 0;
        int apart = 0;
        for (int j = 0; j < sd.length; j++) {
            double z = Closure.difference(y[first + j], y[first + open]);
            if (z != 0 && sd[j] != 0) {
                sum += z * z * sd[j] * sd[j];
                apart++;
            }
        }
        return apart > 1 ? Double.NaN : sum;
    }
}
