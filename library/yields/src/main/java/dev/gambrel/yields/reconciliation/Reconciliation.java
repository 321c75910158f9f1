package dev.gambrel.yields.reconciliation;

import dev.gambrel.yields.figure.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A sheet in balance: every weight moved as far as its uncertainty allows and no further, so that each cut weighs what its parts weigh
 * together.
 *
 * <pre>{@code
 * MassTree tree = MassTree.of(-1, 0, 0, 0); // leg: meat, bone, drip
 * Readings sheet = Readings.none(4)
 *         .with(0, 5.20, 0.0001).with(1, 4.02, 0.0001).with(2, 1.14, 0.0001).with(3, 0.03, 0.0004);
 * Reconciliation reconciled = Reconciliation.of(tree, sheet);
 * }</pre>
 *
 * <p>Weights are in any one unit, variances in its square. They are reconciled whether they fit or not: look at {@link #test} first, and at
 * what {@link dev.gambrel.yields.reconciliation.error.Suspects} finds, since one wrong reading is smeared over all. A weight less than 0 is
 * left as it is, being evidence of one. Figures are doubles; balances hold to 1e-12 of the weight. Immutable; safe between threads.
 */
public final class Reconciliation {
    private final MassTree tree;
    private final Readings readings;
    private final List<Integer> released;
    private final TreeBalance balance;

    private Reconciliation(MassTree tree, Readings readings, List<Integer> released, TreeBalance balance) {
        this.tree = tree;
        this.readings = readings;
        this.released = List.copyOf(released);
        this.balance = balance;
    }

    /**
     * Brings readings into balance. O(nodes).
     *
     * @param tree what is cut from what
     * @param readings of its nodes
     * @return the sheet in balance
     * @throws IllegalArgumentException if the readings are of another number of nodes
     */
    public static Reconciliation of(MassTree tree, Readings readings) {
        return of(tree, readings, List.of());
    }

    /**
     * Brings readings into balance where some cuts need not balance, as if each had a part more that nobody weighed.
     *
     * @param tree what is cut from what
     * @param readings of its nodes
     * @param released the cuts that need not balance
     * @return the sheet in balance elsewhere
     * @throws IllegalArgumentException if the readings are of another number of nodes
     */
    public static Reconciliation of(MassTree tree, Readings readings, List<Integer> released) {
        TreeBalance balance = new TreeBalance(tree);
        released.forEach(balance::release);
        readings.solveWith(balance);
        return new Reconciliation(tree, readings, released, balance);
    }

    /**
     * What is cut from what.
     *
     * @return the tree
     */
    public MassTree tree() {
        return tree;
    }

    /**
     * What was weighed.
     *
     * @return the readings as they were given
     */
    public Readings readings() {
        return readings;
    }

    /**
     * The cuts that need not balance.
     *
     * @return usually none
     */
    public List<Integer> released() {
        return released;
    }

    /**
     * What is known of the weight of a node.
     *
     * @param node of the tree
     * @return a weight; or only its sum with others; or that nothing is known
     */
    public Reconciled weight(int node) {
        if (balance.isKnown(node)) {
            return new Reconciled.Weight(Estimate.of(balance.weight(node), balance.variance(node)));
        }
        int cut = tree.above(node);
        return node > 0 && balance.isKnown(cut) && !released.contains(cut)
                ? new Reconciled.OnlyTogether(cut, openParts(cut), openSum(cut))
                : new Reconciled.NotKnown();
    }

    private Estimate openSum(int cut) {
        return Estimate.of(balance.openSum(cut), balance.openSumVariance(cut));
    }

    private List<Integer> openParts(int cut) {
        return tree.parts(cut).filter(balance::isOpenBelow).boxed().toList();
    }

    /**
     * How the weight of a node varies together with the weight of what it is cut from, for the spread of its share.
     *
     * @param node of the tree, not the first
     * @return the covariance of the reconciled weights; nothing where one of them is not known
     */
    public OptionalDouble covarianceWithAbove(int node) {
        double covariance = balance.covarianceWithAbove(node);
        return Double.isNaN(covariance) ? OptionalDouble.empty() : OptionalDouble.of(covariance);
    }

    /**
     * A sum of reconciled weights, each times a coefficient, such as what they are worth. O(nodes).
     *
     * @param coefficient of each node; 0 where the weight is not known
     * @return the sum, with the variance that the readings give it
     */
    public Estimate figure(IntToDoubleFunction coefficient) {
        return LinearFigure.of(this, coefficient);
    }

    /**
     * Whether a cut adds up.
     *
     * @param cut a node
     * @return how its parts compare with its reading; nothing where one of them is not known, or all are said to be exact
     */
    public Optional<CutBalance> balance(int cut) {
        return balance.isBalanced(cut) && balance.isUsed(cut)
                ? Optional.of(
                        new CutBalance(cut, Estimate.of(balance.innovation(cut), balance.innovationVariance(cut))))
                : Optional.empty();
    }

    /**
     * All cuts that can be held against their parts.
     *
     * @return one for each degree of freedom, in the order of the nodes
     */
    public List<CutBalance> balances() {
        return IntStream.range(0, tree.size())
                .mapToObj(this::balance)
                .flatMap(Optional::stream)
                .toList();
    }

    /**
     * What the other readings say of one.
     *
     * @param node of the tree
     * @return its error, or that nothing checks it
     */
    public ReadingTest reading(int node) {
        if (!readings.isWeighed(node)) {
            return new ReadingTest.NotWeighed();
        }
        if (!balance.isUsed(node)) {
            return new ReadingTest.SetAside();
        }
        double curvature = balance.pullVariance(node);
        return curvature == 0
                ? new ReadingTest.NotChecked()
                : new ReadingTest.Checked(Estimate.of(balance.pull(node) / curvature, 1 / curvature));
    }

    /**
     * Whether the sheet as a whole fits the errors of its scales.
     *
     * @return chi-square and degrees of freedom
     */
    public GlobalTest test() {
        return new GlobalTest(balance.chiSquare(), balance.degreesOfFreedom());
    }

    /**
     * Cuts of which the reading and all parts are said to be exact and yet differ, by more than rounding. The parts are taken then, and the
     * reading is set aside.
     *
     * @return the cuts and what their parts weigh more than they, in order; usually none
     */
    public List<CutBalance> contradictions() {
        return IntStream.range(0, tree.size())
                .filter(v -> readings.isWeighed(v) && !balance.isUsed(v) && balance.innovation(v) != 0)
                .mapToObj(v -> new CutBalance(v, Estimate.exactly(balance.innovation(v))))
                .toList();
    }

    /**
     * Nodes that would weigh less than nothing: a sign that some reading is wrong.
     *
     * @return the nodes in order
     */
    public List<Integer> negative() {
        return IntStream.range(0, tree.size())
                .filter(v -> balance.weight(v) < 0)
                .boxed()
                .toList();
    }

    /**
     * The passes themselves, for what is worked out from them.
     *
     * @return figures of this sheet, not to be solved again
     */
    TreeBalance passes() {
        return balance;
    }
}
