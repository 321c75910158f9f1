package dev.gambrel.yields.reconciliation;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What the scales say of the nodes of a tree: weight and variance of each that was weighed. What is known beforehand, such as the
 * drip to be expected, is a reading too. A variance of 0 says that the weight is exact. Immutable; safe between threads.
 */
public final class Readings {
    private final double[] weight;
    private final double[] variance;

    private Readings(double[] weight, double[] variance) {
        this.weight = weight;
        this.variance = variance;
    }

    /**
     * Nothing weighed yet.
     *
     * @param nodes how many nodes the tree has
     * @return no reading of any
     */
    public static Readings none(int nodes) {
        double[] open = new double[nodes];
        Arrays.fill(open, Double.NaN);
        return new Readings(open, open);
    }

    /**
     * Readings as columns.
     *
     * @param weights for each node what it weighs; NaN where it was not weighed
     * @param variances for each node weighed the square of the standard deviation of its error
     * @return the readings
     * @throws IllegalArgumentException if the columns differ in length, a weight is infinite, or a variance is less than 0, infinite or
     *     not given
     */
    public static Readings of(double[] weights, double[] variances) {
        if (weights.length != variances.length) {
            throw new IllegalArgumentException(weights.length + " weights and " + variances.length + " variances");
        }
        double[] weight = weights.clone();
        double[] variance = variances.clone();
        for (int v = 0; v < weight.length; v++) {
            check(weight[v], variance[v]);
        }
        return new Readings(weight, variance);
    }

    private static void check(double weight, double variance) {
        boolean isWeighed = !Double.isNaN(weight);
        if (isWeighed && !(Double.isFinite(weight) && variance >= 0 && Double.isFinite(variance))) {
            throw new IllegalArgumentException("a reading of " + weight + " with the variance " + variance);
        }
    }

    /**
     * The same with a reading more, or another in its place.
     *
     * @param node of the tree
     * @param reading its weight
     * @param error the variance of the reading
     * @return the fuller readings
     * @throws IllegalArgumentException if the weight is not finite, or the variance is less than 0 or not finite
     */
    public Readings with(int node, double reading, double error) {
        if (Double.isNaN(reading)) {
            throw new IllegalArgumentException("a reading of NaN");
        }
        check(reading, error);
        return replaced(node, reading, error);
    }

    /**
     * The same without what was read of a node.
     *
     * @param node of the tree
     * @return the fewer readings
     */
    public Readings without(int node) {
        return replaced(node, Double.NaN, Double.NaN);
    }

    private Readings replaced(int node, double reading, double error) {
        double[] weights = weight.clone();
        double[] variances = variance.clone();
        weights[node] = reading;
        variances[node] = error;
        return new Readings(weights, variances);
    }

    /**
     * How many nodes the tree has.
     *
     * @return weighed or not
     */
    public int size() {
        return weight.length;
    }

    /**
     * Whether a node was weighed.
     *
     * @param node of the tree
     * @return true if there is a reading
     */
    public boolean isWeighed(int node) {
        return !Double.isNaN(weight[node]);
    }

    /**
     * What was weighed.
     *
     * @return the nodes with a reading, in order
     */
    public IntStream weighed() {
        return IntStream.range(0, weight.length).filter(this::isWeighed);
    }

    /**
     * What the scale says of a node.
     *
     * @param node of the tree
     * @return its weight; NaN where it was not weighed
     */
    public double weight(int node) {
        return weight[node];
    }

    /**
     * How uncertain that is.
     *
     * @param node of the tree
     * @return the variance of the reading; NaN where it was not weighed
     */
    public double variance(int node) {
        return variance[node];
    }

    void solveWith(TreeBalance balance) {
        balance.solve(weight, variance);
    }
}
