package dev.gambrel.yields.cuttingtest;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Ratio;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.MassTree;
import dev.gambrel.yields.reconciliation.Readings;
import dev.gambrel.yields.reconciliation.Reconciled;
import dev.gambrel.yields.reconciliation.Reconciliation;
import dev.gambrel.yields.reconciliation.error.Sidak;
import dev.gambrel.yields.reconciliation.error.Suspects;
import dev.gambrel.yields.reconciliation.pattern.Explanation;
import dev.gambrel.yields.reconciliation.pattern.Explanations;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * What was weighed of a carcass, or of several together, brought into balance along the cuts of its specification.
 *
 * <p>Any parts may have been weighed, at any levels. A loss that was not weighed is expected as the specification says, with its spread;
 * where no spread is stated its cut cannot be checked. Nodes are the lines of the {@link YieldPlan}. Immutable; safe between threads.
 */
public final class CuttingTest {
    private final YieldPlan plan;
    private final Placing placing;
    private final Readings weighed;
    private final Reconciliation expected;
    private final Reconciliation lossless;

    private CuttingTest(YieldPlan plan, Placing placing, Readings weighed) {
        this.plan = plan;
        this.placing = placing;
        this.weighed = weighed;
        Losses losses = new Losses(plan, weighed);
        MassTree tree = Placing.tree(plan);
        this.expected = Reconciliation.of(tree, losses.expected());
        this.lossless = Reconciliation.of(tree, losses.none());
    }

    /**
     * A sheet of carcasses whose yields are known. The carcass is on the basis on which those were asked for.
     *
     * @param expected what they should have given
     * @param sheet one reading of each part that was weighed
     * @return the test
     * @throws IllegalArgumentException if a part has two readings
     */
    public static CuttingTest of(ExpectedYields expected, List<PartReading> sheet) {
        return of(expected.plan(), sheet);
    }

    /**
     * A sheet of a specification as it was worked. Its lines may begin on another basis than the specification's: the losses between
     * both are then lines too.
     *
     * @param plan the specification as flat arrays
     * @param sheet one reading of each part that was weighed
     * @return the test
     * @throws IllegalArgumentException if a part has two readings
     */
    public static CuttingTest of(YieldPlan plan, List<PartReading> sheet) {
        Placing placing = new Placing(plan, sheet);
        double[] weights = new double[plan.size()];
        double[] variances = new double[plan.size()];
        Arrays.fill(weights, Double.NaN);
        Arrays.fill(variances, Double.NaN);
        placing.readings().forEach((node, reading) -> {
            weights[node] = reading.kilograms();
            variances[node] = reading.variance();
        });
        return new CuttingTest(plan, placing, Readings.of(weights, variances));
    }

    /**
     * The lines that the nodes of the test are.
     *
     * @return names, addresses and kinds by node
     */
    public YieldPlan plan() {
        return plan;
    }

    /**
     * The sheet in balance.
     *
     * @return weights, balances and tests by node; what is expected of losses counts as a reading
     */
    public Reconciliation reconciled() {
        return expected;
    }

    /**
     * The sheet in balance by its weighings alone: of a loss nothing is expected, so that no figure rests on what the specification
     * says. A loss that nobody weighed is what is missing, where its cut and all other parts are known. Worked out at each call,
     * O(nodes).
     *
     * @return weights and balances by node
     */
    public Reconciliation asWeighed() {
        return Reconciliation.of(Placing.tree(plan), weighed);
    }

    /**
     * Readings of parts that the specification as worked does not have: they are in no balance.
     *
     * @return in the order of the sheet
     */
    public List<PartReading> unplaced() {
        return List.copyOf(placing.unplaced());
    }

    /**
     * What was weighed of a node.
     *
     * @param node a line of the plan
     * @return the reading; nothing for a loss that is merely expected
     */
    public Optional<PartReading> reading(int node) {
        return Optional.ofNullable(placing.readings().get(node));
    }

    /**
     * Where a part stands.
     *
     * @param part its address
     * @param state whole or trimmed
     * @return its node; nothing where the specification as worked does not have it
     */
    public OptionalInt node(TreePath part, PartReading.State state) {
        return placing.node(part, state);
    }

    /**
     * What share of its cut a part was, by the reconciled weights.
     *
     * @param node a line of the plan, not the first
     * @return a part of 1; nothing where one of both weights is not known, or the cut weighs nothing
     */
    public Optional<Ratio> share(int node) {
        Reconciled part = expected.weight(node);
        Reconciled cut = expected.weight(plan.node(node).above());
        return part instanceof Reconciled.Weight over && cut instanceof Reconciled.Weight under
                ? share(node, over.estimate(), under.estimate())
                : Optional.empty();
    }

    private Optional<Ratio> share(int node, Estimate over, Estimate under) {
        double together = expected.covarianceWithAbove(node).orElseThrow();
        return under.mean() == 0 ? Optional.empty() : Optional.of(Ratio.of(over, under, together));
    }

    /**
     * What may be wrong, one thing after the other.
     *
     * @param level the chance of a false alarm on a sheet where nothing is wrong, such as 0.05
     * @return the smallest sets of readings that the figures can tell apart
     */
    public Suspects suspects(double level) {
        return Suspects.of(expected, level);
    }

    /**
     * Mistakes with a pattern that the sheet speaks for. They are offered: nothing is changed by them.
     *
     * @param level the chance that any is named on a sheet where nothing is wrong, such as 0.05
     * @return the one that explains most first
     */
    public List<Explanation> explanations(double level) {
        return Explanations.of(expected, Proposals.of(plan, placing.readings(), expected), level);
    }

    /**
     * Parts that are no loss and would weigh less than nothing in balance: what is left for one that was not weighed, where its sisters
     * weigh too much. Such a weight cannot be.
     *
     * @param level the chance that any is named where all weigh something, such as 0.05
     * @return in the order of the plan
     */
    public List<Integer> belowNothing(double level) {
        double critical = Sidak.critical(plan.size(), level);
        return expected.negative().stream()
                .filter(v -> plan.node(v).kind() != Kind.LOSS)
                .filter(v -> expected.weight(v) instanceof Reconciled.Weight known
                        && known.estimate().mean()
                                < -critical
                                        * Math.sqrt(known.estimate().spread().variance()))
                .toList();
    }

    /**
     * Cuts that were weighed, and of whose parts some were and some were not, so that nothing holds them against each other.
     *
     * @return in the order of the plan
     */
    public List<Integer> notChecked() {
        return IntStream.range(0, plan.size())
                .filter(v -> reading(v).isPresent()
                        && expected.balance(v).isEmpty()
                        && parts(v).anyMatch(part -> reading(part).isPresent()))
                .boxed()
                .toList();
    }

    /**
     * Parts of a cut whose weight its own readings do not tell.
     *
     * @param cut a line of the plan
     * @return in the order of the plan
     */
    public List<Integer> openParts(int cut) {
        return parts(cut)
                .filter(part -> reading(part).isEmpty()
                        && plan.node(part).kind() != Kind.LOSS
                        && parts(part).noneMatch(below -> reading(below).isPresent()))
                .boxed()
                .toList();
    }

    private IntStream parts(int cut) {
        return IntStream.range(plan.firstPart(cut), plan.firstPart(cut + 1));
    }

    /**
     * Cuts that gave more than they weighed, even if nothing was lost.
     *
     * @param level the chance that any is named on a sheet where nothing is wrong, such as 0.05
     * @return by how much, in the order of the plan
     */
    public List<CutBalance> moreOutThanIn(double level) {
        List<CutBalance> balances = lossless.balances();
        double critical = Sidak.critical(Math.max(1, balances.size()), level);
        return balances.stream().filter(balance -> balance.z() > critical).toList();
    }
}
