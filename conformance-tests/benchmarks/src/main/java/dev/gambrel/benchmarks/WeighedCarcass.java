package dev.gambrel.benchmarks;

import dev.gambrel.yields.reconciliation.MassTree;
import java.util.Arrays;
import java.util.Random;

/**
 * Cutting tests of 150 nodes with 60 readings, from a fixed seed: carcass, drip and eight cuts, each cut into four, all weighed; of nine of
 * these both parts are weighed, of the other 23 none of their 90, so that of each only the sum is known.
 */
final class WeighedCarcass {
    static final int NODES = 150;
    static final int READINGS = 60;

    private static final int CUTS = 8;
    private static final int DRIP = CUTS + 1;
    private static final int PIECES = DRIP + 1;
    private static final int PARTS = PIECES + 4 * CUTS;

    private WeighedCarcass() {}

    static MassTree tree() {
        int[] above = new int[NODES];
        above[0] = -1;
        for (int v = PIECES; v < PARTS; v++) {
            above[v] = 1 + (v - PIECES) / 4;
        }
        for (int v = PARTS; v < NODES; v++) {
            above[v] = v < READINGS ? PIECES + (v - PARTS) / 2 : PIECES + 9 + (v - READINGS) % 23;
        }
        return MassTree.of(above);
    }

    /** Readings of one sheet; its first 60 nodes are weighed. */
    static double[] readings(MassTree tree, long seed) {
        Random random = new Random(seed);
        double[] weight = new double[NODES];
        for (int v = NODES - 1; v >= 0; v--) {
            weight[v] += tree.isEnd(v) ? 0.05 + random.nextDouble() : 0;
            if (v > 0) {
                weight[tree.above(v)] += weight[v];
            }
        }
        double[] variance = variances();
        for (int v = 0; v < NODES; v++) {
            weight[v] = v < READINGS ? weight[v] + Math.sqrt(variance[v]) * random.nextGaussian() : Double.NaN;
        }
        return weight;
    }

    /** Scales with standard deviations from 2 g to 10 g. */
    static double[] variances() {
        double[] variance = new double[NODES];
        Arrays.fill(variance, Double.NaN);
        for (int v = 0; v < READINGS; v++) {
            double sd = 0.002 + 0.001 * (v * 5 % 9);
            variance[v] = sd * sd;
        }
        return variance;
    }
}
