package dev.gambrel.yields.batch;

import java.util.Arrays;

/**
 * Room for a block of carcasses, side by side, used again for the next. Each column has one entry for each carcass of the
 * block, so that what is done to all of them is one loop over a column. Belongs to one worker.
 */
final class Block {
    /** The most carcasses of a block. */
    static final int SIZE = 64;

    private final double[] fixedShare;
    private final double[] fixedWorked;
    private final double[] shareVariance;
    private final double[][] share;
    private final double[][] worked;
    private final double[][] factor;
    private final double[][] weight;
    private final int[][] grades;
    private final double[][] readings;
    private final double[][] estimates;
    private final double[] kilograms = new double[SIZE];
    private final boolean[] passed = new boolean[SIZE];
    private final boolean[] sure = new boolean[SIZE];
    private final Branches branches;
    private int size;
    private int at;
    private double pathMean;
    private double pathVariance;
    private double pathWorked;

    Block(BatchPlan plan) {
        Layout layout = plan.layout();
        branches = layout.branches();
        fixedShare = layout.share();
        fixedWorked = layout.worked();
        shareVariance = layout.shareVariance();
        share = new double[plan.size()][];
        worked = new double[plan.size()][];
        for (int b = 1; b < branches.count(); b++) {
            int root = branches.roots()[b];
            share[root] = new double[SIZE];
            worked[root] = new double[SIZE];
            Arrays.fill(share[root], fixedShare[root]);
            Arrays.fill(worked[root], fixedWorked[root]);
        }
        factor = new double[branches.count()][SIZE];
        Arrays.fill(factor[0], 1);
        weight = new double[branches.count()][SIZE];
        grades = new int[plan.grades().size()][SIZE];
        readings = new double[plan.readings().size()][SIZE];
        estimates = new double[plan.program().results()][SIZE];
    }

    /** Takes carcasses in; those that are noted as refused are passed over. */
    void take(Carcasses carcasses, int from, int to, byte[] notes, Range possible) {
        size = to - from;
        for (int i = 0; i < size; i++) {
            passed[i] = (notes[from + i] & BatchWorker.REFUSED) != 0;
            kilograms[i] = passed[i] ? 0 : carcasses.kilograms()[from + i];
            sure[i] = possible.holds(kilograms[i]);
        }
        for (int k = 0; k < grades.length; k++) {
            for (int i = 0; i < size; i++) {
                grades[k][i] = passed[i] ? Carcasses.NOT_KNOWN : carcasses.grade(k, from + i);
            }
        }
        for (int k = 0; k < readings.length; k++) {
            carcasses.copyReadings(k, from, readings[k], size);
        }
    }

    int size() {
        return size;
    }

    double[] kilograms() {
        return kilograms;
    }

    double[] readings(int reading) {
        return readings[reading];
    }

    /** Where each equation puts what it gives. */
    double[][] estimates() {
        return estimates;
    }

    double[] estimated(int equation) {
        return estimates[equation];
    }

    /** Whether doubles are enough to tell, for each carcass. */
    boolean[] sure() {
        return sure;
    }

    /** The share of a line that differs. */
    double[] shares(int line) {
        return share[line];
    }

    /** Turns to one carcass, of which the methods below tell. */
    void turnTo(int carcass) {
        at = carcass;
    }

    int grade(int grade) {
        return grades[grade][at];
    }

    double weighed() {
        return kilograms[at];
    }

    double share(int line) {
        return share[line] == null ? fixedShare[line] : share[line][at];
    }

    double worked(int line) {
        return worked[line] == null ? fixedWorked[line] : worked[line][at];
    }

    /** How much of the pieces goes one way, and how much of their weight. */
    void split(int line, double pieces, double ofWeight) {
        worked[line][at] = pieces;
        share[line][at] = ofWeight;
    }

    /** Works out mean, variance and pieces of the last line of a path, for one kilogram weighed. */
    void descend(int[] path) {
        pathMean = 1;
        pathVariance = 0;
        pathWorked = 1;
        for (int line : path) {
            double m = share(line);
            pathVariance = pathMean * pathMean * shareVariance[line] + pathVariance * (m * m + shareVariance[line]);
            pathMean *= m;
            pathWorked *= worked(line);
        }
    }

    double pathMean() {
        return pathMean;
    }

    double pathVariance() {
        return pathVariance;
    }

    double pathWorked() {
        return pathWorked;
    }

    /** Multiplies the shares down to the root of each branch. */
    void multiply() {
        for (int b = 1; b < factor.length; b++) {
            double[] above = factor[branches.above()[b]];
            double lead = branches.lead()[b];
            double[] shares = share[branches.roots()[b]];
            for (int i = 0; i < size; i++) {
                factor[b][i] = above[i] * lead * shares[i];
            }
        }
    }

    /** What one kilogram of a carcass gives at the root of each branch. */
    void settle(int carcass, double[] roots) {
        for (int b = 0; b < roots.length; b++) {
            factor[b][carcass] = roots[b];
        }
    }

    /** A carcass that gives nothing. */
    void refuse(int carcass) {
        passed[carcass] = true;
        kilograms[carcass] = 0;
        for (double[] roots : factor) {
            roots[carcass] = 0;
        }
    }

    /** Works out the weight at the root of each branch. */
    void weigh() {
        for (int b = 0; b < factor.length; b++) {
            for (int i = 0; i < size; i++) {
                weight[b][i] = kilograms[i] * factor[b][i];
            }
        }
        Arrays.fill(factor[0], 1);
    }

    boolean isPassed(int carcass) {
        return passed[carcass];
    }

    /** The weight at the root of a branch, 0 of a carcass that is refused. */
    double[] weights(int branch) {
        return weight[branch];
    }
}
