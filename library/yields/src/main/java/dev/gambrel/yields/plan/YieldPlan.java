package dev.gambrel.yields.plan;

import dev.gambrel.yields.closure.Closure;
import dev.gambrel.yields.closure.CutShares;
import dev.gambrel.yields.figure.Estimate;
import java.util.function.IntToDoubleFunction;

/**
 * A tree as flat arrays, with the weight of every part for one kilogram of what is weighed.
 *
 * <p>Built once, never changed. Parents stand before children; the parts of node v are those from {@code firstPart(v)} up
 * to {@code firstPart(v + 1)}. In the arrays NaN stands for a spread that is not stated.
 */
public final class YieldPlan {
    private final Node[] nodes;
    private final int[] first;
    private final Closure[] closure;
    private final double[] share;
    private final double[] shareVariance;
    private final double[] mean;
    private final double[] variance;
    private final boolean[] shareStated;
    private final boolean[] stated;
    private final int carcass;

    YieldPlan(Node[] nodes, int[] first, CutShares[] cuts, int steps) {
        this.nodes = nodes;
        this.first = first;
        int n = nodes.length;
        closure = new Closure[n];
        share = new double[n];
        shareVariance = new double[n];
        mean = new double[n];
        variance = new double[n];
        shareStated = new boolean[n];
        stated = new boolean[n];
        share[0] = 1;
        mean[0] = 1;
        stated[0] = true;
        for (int v = 0; v < n; v++) {
            divide(v, cuts[v]);
        }
        carcass = carcassBelow(steps);
    }

    private void divide(int v, CutShares cut) {
        closure[v] = cut.closure();
        for (int j = first[v]; j < first[v + 1]; j++) {
            double m = cut.mean()[j - first[v]];
            double s = cut.sd()[j - first[v]];
            share[j] = m;
            shareVariance[j] = s * s;
            mean[j] = mean[v] * m;
            variance[j] = mean[v] * mean[v] * s * s + variance[v] * (m * m + s * s);
            shareStated[j] = cut.stated()[j - first[v]];
            stated[j] = stated[v] && shareStated[j];
        }
    }

    private int carcassBelow(int steps) {
        int v = 0;
        for (int step = 0; step < steps; step++) {
            v = first[v + 1] - 1;
        }
        return v;
    }

    /**
     * How many lines there are.
     *
     * @return 1 or more
     */
    public int size() {
        return nodes.length;
    }

    /**
     * What a line stands for.
     *
     * @param v the line, from 0
     * @return the line's words and place
     */
    public Node node(int v) {
        return nodes[v];
    }

    /**
     * The carcass on the specification's own basis.
     *
     * @return its line; 0 where that is what was weighed
     */
    public int carcass() {
        return carcass;
    }

    /**
     * Where the parts of a line begin.
     *
     * @param v the line, from 0; {@code size()} asks where the last line's parts end
     * @return the first of its parts; they go up to {@code firstPart(v + 1)}
     */
    public int firstPart(int v) {
        return first[v];
    }

    /**
     * Whether nothing more is taken from a line.
     *
     * @param v the line
     * @return true if it has no parts
     */
    public boolean isEnd(int v) {
        return first[v] == first[v + 1];
    }

    /**
     * Whether a part's own share was stated or follows from others.
     *
     * @param v the part
     * @return true if it is known
     */
    public boolean isShareStated(int v) {
        return shareStated[v];
    }

    /**
     * Whether a part's share and all above it were stated or follow from others.
     *
     * @param v the part
     * @return true if its weight is known
     */
    public boolean isStated(int v) {
        return stated[v];
    }

    /**
     * The mean share of the cut above.
     *
     * @param v the part
     * @return a part of 1; 1 for what was weighed
     */
    public double share(int v) {
        return share[v];
    }

    /**
     * The variance of the share of the cut above.
     *
     * @param v the part
     * @return the square of its standard deviation; NaN where that is not stated
     */
    public double shareVariance(int v) {
        return shareVariance[v];
    }

    /**
     * The mean share of what was weighed.
     *
     * @param v the part
     * @return a part of 1; 1 for what was weighed
     */
    public double mean(int v) {
        return mean[v];
    }

    /**
     * Mean and spread of the weight of all pieces, for one kilogram weighed.
     *
     * @param v the part
     * @return kilograms
     */
    public Estimate weight(int v) {
        return Estimate.of(mean[v], variance[v]);
    }

    /**
     * Mean and spread of any linear figure, for one kilogram weighed: the sum over all parts of their weight times their
     * coefficient.
     *
     * <p>With shares S of a cut, X = Σ S_j (a_j + X_j), y_j = a_j + E[X_j] and v_j = Var[X_j], levels independent:
     * E[X] = Σ m_j y_j and Var[X] = y'Cy + Σ (m_j² + C_jj) v_j, exactly (L. A. Goodman, "On the exact variance of products",
     * Journal of the American Statistical Association 55, 1960, and the law of total variance). O(nodes).
     *
     * @param coefficient of each line
     * @return the figure
     */
    public Estimate figure(IntToDoubleFunction coefficient) {
        double[] y = means(coefficient);
        return Estimate.of(y[0], overAllLevels(cut -> closure[cut].variance(y, first[cut])));
    }

    /**
     * Covariance of two linear figures, for one kilogram weighed. As for the variance of one: Cov[X, X'] = y'Cy' + Σ (m_j² +
     * C_jj) Cov[X_j, X'_j], exactly. O(nodes).
     *
     * @param coefficient of each line in the one
     * @param other of each line in the other
     * @return the covariance, or NaN where the stated spreads do not settle it
     */
    public double covariance(IntToDoubleFunction coefficient, IntToDoubleFunction other) {
        double[] y = means(coefficient);
        double[] z = means(other);
        return overAllLevels(cut -> closure[cut].covariance(y, z, first[cut]));
    }

    /** The mean of a figure for one kilogram of each part, children first. */
    private double[] means(IntToDoubleFunction coefficient) {
        double[] y = new double[nodes.length];
        for (int cut = y.length - 1; cut >= 0; cut--) {
            y[cut] = coefficient.applyAsDouble(cut);
            for (int j = first[cut]; j < first[cut + 1]; j++) {
                y[cut] += share[j] * y[j];
            }
        }
        return y;
    }

    /** What the shares of each cut bring into a variance or a covariance, gathered up to what was weighed. */
    private double overAllLevels(IntToDoubleFunction within) {
        double[] v = new double[nodes.length];
        for (int cut = v.length - 1; cut >= 0; cut--) {
            v[cut] = within.applyAsDouble(cut);
            for (int j = first[cut]; j < first[cut + 1]; j++) {
                v[cut] += v[j] == 0 ? 0 : (share[j] * share[j] + shareVariance[j]) * v[j];
            }
        }
        return v[0];
    }
}
