package dev.gambrel.yields.batch;

import java.util.List;

/** Room for one carcass, used again for the next. Belongs to one worker. */
final class Row {
    private final double[] share;
    private final double[] shareVariance;
    private final double[] worked;
    private final double[] factor;
    private final Branches branches;
    private final int[] grades;
    private final double[] readings;
    private final double[] estimates;
    private final double[] stack;
    private double kilograms;
    private double pathMean;
    private double pathVariance;
    private double pathWorked;

    Row(BatchPlan plan) {
        Layout layout = plan.layout();
        share = layout.share().clone();
        worked = layout.worked().clone();
        branches = layout.branches();
        factor = new double[branches.count()];
        branches.factors(share, factor);
        shareVariance = layout.shareVariance();
        grades = new int[plan.grades().size()];
        readings = new double[plan.readings().size()];
        estimates = new double[plan.program().results()];
        stack = new double[plan.program().depth()];
    }

    /** Takes a carcass in; false where a reading is of another kind than it should be, or one that is needed is missing. */
    boolean read(Carcasses carcasses, int i, List<Range> possible, int[] needed) {
        kilograms = carcasses.kilograms()[i];
        boolean sound = true;
        for (int k = 0; k < grades.length; k++) {
            grades[k] = carcasses.grade(k, i);
        }
        for (int k = 0; k < readings.length; k++) {
            readings[k] = carcasses.reading(k, i);
            sound &= Double.isNaN(readings[k]) || possible.get(k).holds(readings[k]);
        }
        for (int k : needed) {
            sound &= !Double.isNaN(readings[k]);
        }
        return sound;
    }

    boolean estimate(Program program) {
        return program.run(kilograms, readings, stack, estimates);
    }

    /** Works out mean, variance and pieces of the last line of a path, for one kilogram weighed. */
    void descend(int[] path) {
        pathMean = 1;
        pathVariance = 0;
        pathWorked = 1;
        for (int line : path) {
            double m = share[line];
            pathVariance = pathMean * pathMean * shareVariance[line] + pathVariance * (m * m + shareVariance[line]);
            pathMean *= m;
            pathWorked *= worked[line];
        }
    }

    /** Multiplies the shares down to the root of each branch. */
    void multiply() {
        branches.factors(share, factor);
    }

    void share(int line, double value) {
        share[line] = value;
    }

    double share(int line) {
        return share[line];
    }

    /** How much of the pieces goes one way, and how much of their weight. */
    void split(int line, double pieces, double weight) {
        worked[line] = pieces;
        share[line] = weight;
    }

    double worked(int line) {
        return worked[line];
    }

    int grade(int grade) {
        return grades[grade];
    }

    double reading(int reading) {
        return readings[reading];
    }

    double estimated(int equation) {
        return estimates[equation];
    }

    double kilograms() {
        return kilograms;
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

    /** What one kilogram gives at the root of each branch. */
    double[] factor() {
        return factor;
    }
}
