package dev.gambrel.yields.reconciliation;

import java.util.Arrays;
import java.util.Random;

/** Sheets drawn for the laws: any tree, weights of its ends from a gram to a tonne, scales from good to poor. */
final class Sheets {
    final MassTree tree;
    final double[] truth;
    final double[] reading;
    final double[] variance;

    private Sheets(MassTree tree, double[] truth, double[] reading, double[] variance) {
        this.tree = tree;
        this.truth = truth;
        this.reading = reading;
        this.variance = variance;
    }

    /** Every end weighed, and three in five of the cuts. */
    static Sheets drawn(long seed, int most) {
        return drawn(seed, most, 1, 0.6);
    }

    static Sheets drawn(long seed, int most, double ofEnds, double ofCuts) {
        Random random = new Random(seed);
        int n = 2 + random.nextInt(most - 1);
        int[] above = new int[n];
        above[0] = -1;
        for (int v = 1; v < n; v++) {
            above[v] = random.nextBoolean() ? v - 1 - random.nextInt(Math.min(v, 3)) : random.nextInt(v);
        }
        MassTree tree = MassTree.of(above);
        double[] truth = new double[n];
        for (int v = n - 1; v >= 0; v--) {
            truth[v] += tree.isEnd(v) ? Math.round(4096 * Math.exp(random.nextGaussian())) / 4096.0 : 0;
            if (v > 0) {
                truth[tree.above(v)] += truth[v];
            }
        }
        double[] reading = new double[n];
        double[] variance = new double[n];
        Arrays.fill(reading, Double.NaN);
        Arrays.fill(variance, Double.NaN);
        for (int v = 0; v < n; v++) {
            if (random.nextDouble() < (tree.isEnd(v) ? ofEnds : ofCuts)) {
                double sd = 0.005 * Math.exp(random.nextGaussian());
                reading[v] = truth[v] + sd * random.nextGaussian();
                variance[v] = sd * sd;
            }
        }
        return new Sheets(tree, truth, reading, variance);
    }

    /** The same sheet as if no scale had erred. */
    Sheets withoutError() {
        double[] exact = truth.clone();
        for (int v = 0; v < exact.length; v++) {
            exact[v] = Double.isNaN(reading[v]) ? Double.NaN : truth[v];
        }
        return new Sheets(tree, truth, exact, variance);
    }

    Readings readings() {
        return Readings.of(reading, variance);
    }

    Reconciliation reconciled() {
        return Reconciliation.of(tree, readings());
    }
}
