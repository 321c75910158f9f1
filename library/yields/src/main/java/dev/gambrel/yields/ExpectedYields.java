package dev.gambrel.yields;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.working.Pairs;
import dev.gambrel.yields.working.WayUsed;
import dev.gambrel.yields.working.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;

/**
 * What one carcass should give, the weight on the scale taken as exact.
 *
 * <p>Holds the figures for one kilogram, worked out once for the specification, and the weight; lines are made on demand.
 * The weight of all ends together is the weight given, to a relative 1e-12.
 */
public final class ExpectedYields {
    private final Worked worked;
    private final CarcassWeight given;
    private final YieldPlan plan;
    private final Totals totals;
    private final Pairs pairs;
    private final double kilograms;

    ExpectedYields(Worked worked, CarcassWeight given, YieldPlan plan, Totals totals, Pairs pairs) {
        this.worked = worked;
        this.given = given;
        this.plan = plan;
        this.totals = totals;
        this.pairs = pairs;
        this.kilograms = given.mass().value();
    }

    /**
     * The specification as it is worked: each way in use is a cut within its cut.
     *
     * @return the tree that the shares come from, without ways
     */
    public CutTree tree() {
        return worked.tree();
    }

    /**
     * The ways in which cuts are worked, and why.
     *
     * @return every way in use, from the top down; empty where no cut has ways
     */
    public List<WayUsed> ways() {
        return worked.ways();
    }

    /**
     * The lines as flat arrays, for one kilogram of what is weighed.
     *
     * @return the plan that all figures are worked out from
     */
    public YieldPlan plan() {
        return plan;
    }

    /**
     * How the two pieces of a pair are taken to vary together.
     *
     * @return as the working says
     */
    public Pairs pairs() {
        return pairs;
    }

    /**
     * The weight that was given.
     *
     * @return as it was given
     */
    public CarcassWeight given() {
        return given;
    }

    /**
     * What was put on the scale, and all below it by way of {@link YieldRow#parts}. Where it was weighed on an earlier basis
     * than the specification's, the losses between the two come first.
     *
     * @return the line of level 0
     */
    public YieldRow weighed() {
        return row(0);
    }

    /**
     * The carcass on the specification's own basis.
     *
     * @return the same as {@link #weighed} unless another basis was weighed
     */
    public YieldRow carcass() {
        return row(plan.carcass());
    }

    /**
     * Every line, as read from top to bottom: each cut is followed by all below it.
     *
     * @return the lines
     */
    public List<YieldRow> rows() {
        List<YieldRow> rows = new ArrayList<>(plan.size());
        addWithParts(weighed(), rows);
        return rows;
    }

    private static void addWithParts(YieldRow row, List<YieldRow> rows) {
        rows.add(row);
        for (YieldRow part : row.parts()) {
            addWithParts(part, rows);
        }
    }

    /**
     * The line at an address: of a cut, as it enters the block. Costs O(parts); for the carcass see {@link #carcass}.
     *
     * @param path an address in the tree
     * @return the first line there, if any
     */
    public Optional<YieldRow> row(TreePath path) {
        for (int v = 0; v < plan.size(); v++) {
            if (plan.node(v).path().equals(path)) {
                return Optional.of(row(v));
            }
        }
        return Optional.empty();
    }

    private YieldRow row(int index) {
        return new YieldRow(plan, index, kilograms, pairs);
    }

    /**
     * What has one outcome. All outcomes together are the weight given.
     *
     * @param outcome what becomes of it
     * @return kilograms
     */
    public Estimate total(Outcome outcome) {
        return totals.outcomes().get(outcome).times(kilograms);
    }

    /**
     * What is sold under its own name.
     *
     * @return kilograms
     */
    public Estimate products() {
        return totals.products().times(kilograms);
    }

    /**
     * What comes together in each stream. Remainders of portions are not counted here but with the cut that is portioned.
     *
     * @return every stream declared, in the order declared
     */
    public List<StreamYield> streams() {
        return totals.streams().stream()
                .map(s -> new StreamYield(s.stream(), s.weight().times(kilograms)))
                .toList();
    }

    /**
     * Any linear figure over the tree, such as a value: the sum of every line's weight times its coefficient. Mean and
     * standard deviation are exact, all weights varying together as the shares do.
     *
     * @param coefficient of each line; usually 0 for lines that are cut further, so that no weight counts twice
     * @return the figure in kilograms times the unit of the coefficient
     */
    public Estimate figure(ToDoubleFunction<YieldRow> coefficient) {
        return plan.figure(v -> coefficient.applyAsDouble(row(v))).times(kilograms);
    }

    /**
     * Several linear figures at once, such as saleable weight, value and cost, and how they vary together. What one part gains
     * the others of its cut lose, so parts of one cut mostly vary against each other; parts of different cuts vary together as
     * far as what they are cut from does.
     *
     * <p>Exact; one pass over the lines for all figures. The covariance of two is in kilograms squared times the units of both
     * coefficients, and not stated where the spreads stated do not settle it.
     *
     * @param coefficients of each line in each figure, as for {@link #figure}
     * @return the figures in that order
     */
    public JointEstimate figures(List<ToDoubleFunction<YieldRow>> coefficients) {
        return plan.figures(ofLines(coefficients)).times(kilograms);
    }

    /**
     * How two linear figures vary together, as {@link #figures} tells it of several.
     *
     * @param coefficient of each line in the one figure, as for {@link #figure}
     * @param other of each line in the other
     * @return kilograms squared times the units of both coefficients, less than 0 where one is low when the other is high;
     *     nothing where the spreads stated do not settle it
     */
    public OptionalDouble covariance(ToDoubleFunction<YieldRow> coefficient, ToDoubleFunction<YieldRow> other) {
        return figures(List.of(coefficient, other)).covariance(0, 1);
    }

    List<IntToDoubleFunction> ofLines(List<ToDoubleFunction<YieldRow>> coefficients) {
        return coefficients.stream()
                .<IntToDoubleFunction>map(each -> v -> each.applyAsDouble(row(v)))
                .toList();
    }

    /** What these carcasses give together, of which this is one of mean weight. */
    CombinedYields combined(CarcassLot lot, Doubt doubt) {
        return new CombinedYields(this, plan, lot, doubt);
    }

    /**
     * The pieces that are portioned, of the cuts that are not divided further. Of several portions written of one cut only
     * the first is given: nothing says how a piece is shared out between them.
     *
     * @return in the order of the cuts
     */
    public List<PortionedPiece> portions() {
        List<PortionedPiece> found = new ArrayList<>();
        if (carcass().isEnd()) {
            return found;
        }
        addPortions(tree().parts(), carcass().parts(), found);
        return found;
    }

    private void addPortions(List<Part> parts, List<YieldRow> rows, List<PortionedPiece> found) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i) instanceof Cut cut) {
                YieldRow row = rows.get(i);
                if (!cut.isDivided() && !cut.portions().isEmpty()) {
                    List<YieldRow> below = row.parts();
                    YieldRow finished = below.isEmpty() ? row : below.get(below.size() - 1);
                    addPortion(finished, cut.portions().get(0), found);
                }
                addPortions(cut.parts(), row.parts(), found);
            }
        }
    }

    private void addPortion(YieldRow finished, Portion portion, List<PortionedPiece> found) {
        finished.onePiece()
                .filter(piece -> PortionedPiece.isSomething(portion))
                .map(piece -> new PortionedPiece(
                        finished.path(), portion, finished.ofCarcass(), finished.pieces(), piece, pairs))
                .ifPresent(found::add);
    }
}
