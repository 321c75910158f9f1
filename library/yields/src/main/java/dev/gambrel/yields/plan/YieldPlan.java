package dev.gambrel.yields.plan;

import dev.gambrel.yields.closure.Closure;
import dev.gambrel.yields.closure.CutShares;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.JointEstimate;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A tree as flat arrays, with the weight of every part for one kilogram of what is weighed.
 *
 * <p>Built once, never changed. Parents stand before children; the parts of node v are those from {@code firstPart(v)} up
 * to {@code firstPart(v + 1)}. In the arrays NaN stands for a spread that is not stated.
 */
public final class YieldPlan {
    private final Node[] nodes;
    private final int[] first;
    private final CutShares[] cuts;
    private final double[] share;
    private final double[] shareVariance;
    private final double[] mean;
    private final double[] variance;
    private final boolean[] shareStated;
    private final boolean[] stated;
    private final int steps;
    private final int carcass;

    YieldPlan(Node[] nodes, int[] first, CutShares[] cuts, int steps) {
        this.nodes = nodes;
        this.first = first;
        this.cuts = cuts;
        this.steps = steps;
        int n = nodes.length;
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
        carcass = carcassBelow();
    }

    private void divide(int v, CutShares cut) {
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

    private int carcassBelow() {
        int v = 0;
        for (int step = 0; step < steps; step++) {
            v = first[v + 1] - 1;
        }
        return v;
    }

    /**
     * The same tree with other spreads of its shares, closed by the same rules.
     *
     * @param deviation for each line the standard deviation of its share of the cut above, as a part of 1; NaN where not stated;
     *     that of a part that takes what is left is not read
     * @return the tree so varying
     * @throws IllegalArgumentException if in a cut where none takes what is left one spread exceeds the sum of the others
     */
    public YieldPlan varying(IntToDoubleFunction deviation) {
        CutShares[] varying = new CutShares[cuts.length];
        for (int v = 0; v < varying.length; v++) {
            varying[v] = cuts[v].varying(IntStream.range(first[v], first[v + 1])
                    .mapToDouble(deviation::applyAsDouble)
                    .toArray());
        }
        return new YieldPlan(nodes, first, varying, steps);
    }

    /**
     * The same tree, its shares varying in two ways that know nothing of one another.
     *
     * @param other the same tree as it varies in the other way
     * @return the tree varying in both
     */
    public YieldPlan plus(YieldPlan other) {
        CutShares[] both = new CutShares[cuts.length];
        Arrays.setAll(both, v -> cuts[v].plus(other.cuts[v]));
        return new YieldPlan(nodes, first, both, steps);
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
     * Mean and spread of any linear figure, for one kilogram weighed. O(nodes).
     *
     * @param coefficient of each line
     * @return the figure
     */
    public Estimate figure(IntToDoubleFunction coefficient) {
        return figures(List.of(coefficient)).figure(0);
    }

    /**
     * Several linear figures, for one kilogram weighed: each the sum over all parts of their weight times their coefficient.
     *
     * <p>With shares S of a cut, X = Σ S_j (a_j + X_j), y_j = a_j + E[X_j] and V_j = Cov[X_j, Z_j], levels independent: E[X] =
     * Σ m_j y_j and Cov[X, Z] = y'Cz + Σ (m_j² + C_jj) V_j, exactly; the variance of one is its covariance with itself (L. A.
     * Goodman, "On the exact variance of products", Journal of the American Statistical Association 55, 1960, and the law of
     * total covariance). One pass from the leaves up, O(nodes × figures²).
     *
     * @param coefficients for each figure its coefficient of each line
     * @return the figures in that order; a covariance is not stated where the spreads stated do not settle it
     */
    public JointEstimate figures(List<IntToDoubleFunction> coefficients) {
        int figures = coefficients.size();
        double[][] mean = new double[figures][nodes.length];
        double[][][] together = new double[figures][figures][];
        double[] means = new double[figures];
        double[][] covariances = new double[figures][figures];
        for (int a = 0; a < figures; a++) {
            for (int b = 0; b <= a; b++) {
                together[a][b] = new double[nodes.length];
            }
        }
        for (int cut = nodes.length - 1; cut >= 0; cut--) {
            for (int a = 0; a < figures; a++) {
                mean[a][cut] = coefficients.get(a).applyAsDouble(cut) + ofParts(cut, mean[a]);
                for (int b = 0; b <= a; b++) {
                    together[a][b][cut] = covariance(cut, mean[a], mean[b]) + ofPartsSquared(cut, together[a][b]);
                }
            }
        }
        for (int a = 0; a < figures; a++) {
            means[a] = mean[a][0];
            for (int b = 0; b <= a; b++) {
                covariances[a][b] = together[a][b][0];
                covariances[b][a] = together[a][b][0];
            }
        }
        return JointEstimate.of(means, covariances);
    }

    /** What the shares of a cut bring into a variance or a covariance, the parts' own figures taken at their means. */
    private double covariance(int cut, double[] y, double[] z) {
        Closure closure = cuts[cut].closure();
        return y == z ? closure.variance(y, first[cut]) : closure.covariance(y, z, first[cut]);
    }

    private double ofParts(int cut, double[] ofPart) {
        double sum = 0;
        for (int j = first[cut]; j < first[cut + 1]; j++) {
            sum += share[j] * ofPart[j];
        }
        return sum;
    }

    private double ofPartsSquared(int cut, double[] ofPart) {
        double sum = 0;
        for (int j = first[cut]; j < first[cut + 1]; j++) {
            sum += ofPart[j] == 0 ? 0 : (share[j] * share[j] + shareVariance[j]) * ofPart[j];
        }
        return sum;
    }
}
