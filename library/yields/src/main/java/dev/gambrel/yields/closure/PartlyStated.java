package dev.gambrel.yields.closure;

/**
 * Some parts have no stated spread and none takes what is left. Then nothing is known of how two stated parts vary
 * together: a figure that tells more than one of them from the others has no known variance.
 *
 * @param open one part whose spread is not stated
 * @param sd the standard deviations of the shares, NaN where not stated
 */
record PartlyStated(int open, double[] sd) implements Closure {
    @Override
    public double covariance(double[] y, double[] z, int first) {
        double sum = 0;
        int apartInY = 0;
        int apartInZ = 0;
        int apartInBoth = 0;
        for (int j = 0; j < sd.length; j++) {
            boolean inY = sd[j] != 0 && Closure.difference(y[first + j], y[first + open]) != 0;
            boolean inZ = sd[j] != 0 && Closure.difference(z[first + j], z[first + open]) != 0;
            apartInY += inY ? 1 : 0;
            apartInZ += inZ ? 1 : 0;
            if (inY && inZ) {
                apartInBoth++;
                sum += (y[first + j] - y[first + open]) * (z[first + j] - z[first + open]) * sd[j] * sd[j];
            }
        }
        boolean isKnown = apartInY * apartInZ == apartInBoth;
        return isKnown ? sum : Double.NaN;
    }
}
