package dev.gambrel.yields.reconciliation;

import java.util.Arrays;
import java.util.stream.IntStream;

/** The pass from the parts up: what is known of each node from its own reading and all below it. */
final class UpwardPass {
    /** What exact readings may differ by from rounding, of the sum of what is added. */
    private static final double ROUNDING = 1e-12;

    private final MassTree tree;
    private final int[] openFromTheStart;
    private final int[] open;
    private final boolean[] used;
    private final double[] sum;
    private final double[] lost;
    private final double[] sumVariance;
    private final double[] mean;
    private final double[] variance;
    private final double[] others;
    private final double[] innovation;
    private final double[] innovationVariance;
    private final double[] precision;
    private double chiSquare;
    private int compared;

    UpwardPass(MassTree tree) {
        this.tree = tree;
        int n = tree.size();
        openFromTheStart = IntStream.range(0, n).map(v -> tree.isEnd(v) ? 1 : 0).toArray();
        open = new int[n];
        used = new boolean[n];
        sum = new double[n];
        lost = new double[n];
        sumVariance = new double[n];
        mean = new double[n];
        variance = new double[n];
        others = new double[n];
        innovation = new double[n];
        innovationVariance = new double[n];
        precision = new double[n];
    }

    /** As if a cut had a part more that nobody weighed. */
    void release(int cut) {
        openFromTheStart[cut] = 1;
    }

    void run(double[] readings, double[] variances) {
        chiSquare = 0;
        compared = 0;
        System.arraycopy(openFromTheStart, 0, open, 0, open.length);
        Arrays.fill(sum, 0);
        Arrays.fill(lost, 0);
        Arrays.fill(sumVariance, 0);
        for (int v = open.length - 1; v >= 0; v--) {
            learnFromParts(v, readings[v], variances[v]);
            tellAbove(v);
        }
    }

    private void learnFromParts(int v, double reading, double error) {
        boolean isWeighed = !Double.isNaN(reading);
        used[v] = isWeighed;
        if (open[v] > 0) {
            mean[v] = reading;
            variance[v] = isWeighed ? error : Double.POSITIVE_INFINITY;
            return;
        }
        innovation[v] = Double.NaN;
        innovationVariance[v] = Double.NaN;
        double parts = sum[v] + lost[v];
        mean[v] = parts;
        variance[v] = sumVariance[v];
        if (isWeighed) {
            compare(v, parts, reading, error);
        }
    }

    private void compare(int v, double parts, double reading, double error) {
        double difference = parts - reading;
        double both = sumVariance[v] + error;
        innovation[v] = difference;
        innovationVariance[v] = both;
        if (both == 0) {
            used[v] = false;
            innovation[v] = Math.abs(difference) <= ROUNDING * size(v) ? 0 : difference;
            return;
        }
        precision[v] = reciprocal(both);
        chiSquare += difference * precision[v] * difference;
        compared++;
        double gain = error * precision[v];
        mean[v] = gain <= 0.5 ? reading + gain * difference : parts - sumVariance[v] * precision[v] * difference;
        variance[v] = sumVariance[v] * gain;
    }

    private void tellAbove(int v) {
        if (v == 0) {
            return;
        }
        int cut = tree.above(v);
        if (isOpen(v)) {
            open[cut]++;
            return;
        }
        others[v] = sumVariance[cut];
        sumVariance[cut] += variance[v];
        add(cut, mean[v]);
    }

    /** What rounding loses is kept beside the sum (D. E. Knuth's exact sum of two), so that a cut of many parts balances too. */
    private void add(int cut, double part) {
        double before = sum[cut];
        double after = before + part;
        double taken = after - before;
        lost[cut] += before - (after - taken) + (part - taken);
        sum[cut] = after;
    }

    /** Finite too where a variance is so small that it has no reciprocal. */
    static double reciprocal(double variance) {
        return 1 / Math.max(variance, Double.MIN_NORMAL);
    }

    private double size(int v) {
        return tree.parts(v).mapToDouble(part -> Math.abs(mean[part])).sum();
    }

    /** Whether nothing is known of a node. */
    boolean isOpen(int v) {
        return variance[v] == Double.POSITIVE_INFINITY;
    }

    /** Of how many parts nothing is known. */
    int open(int v) {
        return open[v];
    }

    /** Whether a reading counts. */
    boolean isUsed(int v) {
        return used[v];
    }

    double mean(int v) {
        return mean[v];
    }

    double variance(int v) {
        return variance[v];
    }

    /** What the parts weigh together of which something is known. */
    double sum(int v) {
        return sum[v] + lost[v];
    }

    double sumVariance(int v) {
        return sumVariance[v];
    }

    /** The variances of the sisters that come after a node. */
    double others(int v) {
        return others[v];
    }

    double innovation(int v) {
        return open[v] > 0 ? Double.NaN : innovation[v];
    }

    double innovationVariance(int v) {
        return open[v] > 0 ? Double.NaN : innovationVariance[v];
    }

    /** One over the variance of the innovation, of a cut with a reading that counts. */
    double precision(int v) {
        return precision[v];
    }

    /** Of all innovations. */
    double chiSquare() {
        return chiSquare;
    }

    /** How many innovations there are. */
    int compared() {
        return compared;
    }
}
