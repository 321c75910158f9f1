package dev.gambrel.yields.reconciliation;

/**
 * The two passes, for whoever has many sheets of one tree: columns in, columns out, and no object made for a sheet.
 *
 * <p>Weighted least squares under the balances of a tree (R. S. H. Mah, G. M. Stanley and D. M. Downing, "Reconciliation and
 * rectification of process flow and inventory data", 1976), worked out as messages of normal distributions: from the parts up what they say
 * of each cut, then from the top down in the adjoint form of smoothing (A. E. Bryson and M. Frazier, 1963), which divides by no variance of a
 * reading: 0 needs no case of its own. O(nodes) for weights, variances and the test of every reading.
 *
 * <p>Whether a weight is known and whether a reading is checked follows from what was weighed and not from the size of a figure. Figures
 * agree with a dense solution to 1e-12 of the weight. Not safe between threads: one for each.
 */
public final class TreeBalance {
    private final MassTree tree;
    private final UpwardPass up;
    private final double[] passed;
    private final double[] perVariance;
    private final double[] force;
    private final double[] forceVariance;
    private final double[] pull;
    private final double[] pullVariance;
    private final double[] weight;
    private final double[] variance;

    /**
     * Room for the sheets of a tree.
     *
     * @param tree what is cut from what
     */
    public TreeBalance(MassTree tree) {
        this.tree = tree;
        this.up = new UpwardPass(tree);
        int n = tree.size();
        passed = new double[n];
        perVariance = new double[n];
        force = new double[n];
        forceVariance = new double[n];
        pull = new double[n];
        pullVariance = new double[n];
        weight = new double[n];
        variance = new double[n];
    }

    /**
     * Lets a cut not balance from the next sheet on, as if it had a part more that nobody weighed.
     *
     * @param cut a node with parts
     */
    public void release(int cut) {
        up.release(cut);
    }

    /**
     * Brings a sheet into balance. What was found of the sheet before is forgotten.
     *
     * @param readings for each node its weight; NaN where it was not weighed
     * @param variances for each node weighed the variance of its reading, 0 or more
     */
    public void solve(double[] readings, double[] variances) {
        int n = tree.size();
        if (readings.length != n || variances.length != n) {
            throw new IllegalArgumentException(
                    readings.length + " readings and " + variances.length + " variances of " + n + " nodes");
        }
        up.run(readings, variances);
        settleFirst(variances[0]);
        for (int v = 1; v < n; v++) {
            int cut = tree.above(v);
            if (up.isOpen(v)) {
                takeWhatIsLeft(v, cut);
            } else if (isBalanced(cut)) {
                correct(v, cut, variances[v]);
            } else {
                keep(v, variances[v]);
            }
        }
    }

    private void settleFirst(double error) {
        keep(0, error);
        if (up.isOpen(0)) {
            forget(0);
        }
    }

    private void forget(int v) {
        weight[v] = Double.NaN;
        variance[v] = Double.NaN;
    }

    private void keep(int v, double error) {
        weight[v] = up.mean(v);
        variance[v] = up.variance(v);
        pullParts(v, error, 0, 0);
    }

    private void takeWhatIsLeft(int v, int cut) {
        force[v] = 0;
        forceVariance[v] = 0;
        pull[v] = 0;
        pullVariance[v] = 0;
        if (up.open(cut) == 1) {
            weight[v] = openSum(cut);
            variance[v] = openSumVariance(cut);
        } else {
            forget(v);
        }
    }

    private void correct(int v, int cut, double error) {
        double own = up.variance(v);
        double fromAbove = force[cut];
        double fromAboveVariance = forceVariance[cut];
        double others = passed[cut] + up.others(v);
        passed[cut] += own;
        weight[v] = up.mean(v) + own * fromAbove;
        variance[v] = own;
        if (own > 0 && fromAboveVariance > 0) {
            double gain = own * perVariance[cut];
            variance[v] = gain * others + gain * gain * variance[cut];
        }
        pullParts(v, error, fromAbove, fromAboveVariance);
    }

    /** What the balance of a cut does to its parts, and to its own reading. */
    private void pullParts(int v, double error, double fromAbove, double fromAboveVariance) {
        pull[v] = -fromAbove;
        pullVariance[v] = fromAboveVariance;
        if (!isBalanced(v)) {
            force[v] = 0;
            forceVariance[v] = 0;
            return;
        }
        passed[v] = 0;
        perVariance[v] = UpwardPass.reciprocal(up.sumVariance(v));
        force[v] = fromAbove;
        forceVariance[v] = fromAboveVariance;
        if (up.isUsed(v)) {
            double precision = up.precision(v);
            double step = up.innovation(v) * precision;
            double gain = error * precision;
            double rest = up.sumVariance(v) * precision;
            force[v] = gain * fromAbove - step;
            forceVariance[v] = gain * gain * fromAboveVariance + precision;
            pull[v] = -rest * fromAbove - step;
            pullVariance[v] = rest * rest * fromAboveVariance + precision;
        }
    }

    /**
     * Whether something is known of all parts of a node, so that its balance can be used.
     *
     * @param node of the tree
     * @return false for one without parts
     */
    public boolean isBalanced(int node) {
        return up.open(node) == 0;
    }

    /**
     * Whether nothing is known of a node from its own reading and those below it.
     *
     * @param node of the tree
     * @return true if only what is above it may tell
     */
    public boolean isOpenBelow(int node) {
        return up.isOpen(node);
    }

    /**
     * Whether a node has a reading that counts: one that is not exact beside parts that are exact too.
     *
     * @param node of the tree
     * @return true if it counts
     */
    public boolean isUsed(int node) {
        return up.isUsed(node);
    }

    /**
     * Whether the weight of a node is known.
     *
     * @param node of the tree
     * @return false if the readings do not settle it
     */
    public boolean isKnown(int node) {
        return !Double.isNaN(weight[node]);
    }

    /**
     * What a node weighs.
     *
     * @param node of the tree
     * @return the reconciled weight; NaN where it is not known
     */
    public double weight(int node) {
        return weight[node];
    }

    /**
     * How uncertain that is.
     *
     * @param node of the tree
     * @return the variance of the reconciled weight; NaN where it is not known
     */
    public double variance(int node) {
        return variance[node];
    }

    /**
     * How a node varies together with what it is cut from.
     *
     * @param node of the tree, not the first
     * @return the covariance of both reconciled weights; NaN where one is not known
     */
    public double covarianceWithAbove(int node) {
        int cut = tree.above(node);
        if (!isKnown(node) || !isKnown(cut)) {
            return Double.NaN;
        }
        if (!isBalanced(cut)) {
            return up.isOpen(node) ? variance[cut] : 0;
        }
        return up.sumVariance(cut) == 0 ? 0 : up.variance(node) / up.sumVariance(cut) * variance[cut];
    }

    /**
     * What the parts of which nothing else is known weigh together.
     *
     * @param cut a node with parts
     * @return what the known parts leave of it; NaN where the cut is not known
     */
    public double openSum(int cut) {
        return weight[cut] - up.sum(cut);
    }

    /**
     * How uncertain that is.
     *
     * @param cut a node with parts
     * @return the variance of their sum; NaN where the cut is not known
     */
    public double openSumVariance(int cut) {
        return variance[cut] + up.sumVariance(cut);
    }

    /**
     * By how much the parts of a cut outweigh its reading.
     *
     * @param cut a node
     * @return parts less reading; NaN where either is not known
     */
    public double innovation(int cut) {
        return up.innovation(cut);
    }

    /**
     * How uncertain that is. The differences of all cuts are independent of one another.
     *
     * @param cut a node
     * @return the variance of the difference; NaN where there is none
     */
    public double innovationVariance(int cut) {
        return up.innovationVariance(cut);
    }

    /**
     * What the balance at a cut asks of each of its parts, for a unit of variance.
     *
     * @param cut a node
     * @return more than 0 if the parts weigh too little; 0 where there is no balance
     */
    double force(int cut) {
        return force[cut];
    }

    double forceVariance(int cut) {
        return forceVariance[cut];
    }

    /**
     * By how much a reading strays from the reconciled weight, for a unit of its variance: (y - x)/V, also where V is 0.
     *
     * @param node one with a reading
     * @return half the slope of the chi-square by that reading; 0 where nothing checks it
     */
    public double pull(int node) {
        return pull[node];
    }

    /**
     * The variance of the pull. It is 0 exactly where no other reading checks this one.
     *
     * @param node one with a reading
     * @return half the curvature of the chi-square by that reading
     */
    public double pullVariance(int node) {
        return pullVariance[node];
    }

    /**
     * How badly the sheet fits, all in all.
     *
     * @return the sum of the squared standardised differences of all cuts
     */
    public double chiSquare() {
        return up.chiSquare();
    }

    /**
     * How many independent checks the sheet holds.
     *
     * @return the number of cuts with a reading and parts that are known
     */
    public int degreesOfFreedom() {
        return up.compared();
    }
}
