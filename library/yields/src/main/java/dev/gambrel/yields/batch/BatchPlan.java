package dev.gambrel.yields.batch;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.working.Working;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A specification compiled once to flat arrays, for any number of carcasses.
 *
 * <pre>{@code
 * BatchPlan plan = BatchPlan.of(tree, Working.AS_WRITTEN, Basis.COLD).orElseThrow();
 * BatchSums sums = plan.sums();
 * plan.worker().add(Carcasses.weighed(21.4, 22.9, 19.8), 0, 3, new byte[3], sums);
 * }</pre>
 *
 * <p>All carcasses have the same lines: where ways of working depend on the carcass, all of them stand side by side, and one
 * that a carcass is not worked in weighs nothing. What it gives for a carcass is what {@link
 * dev.gambrel.yields.Yields#forCarcass} gives, to 1e-12 of its weight, and a carcass that is refused there is refused here.
 * Immutable; safe between threads.
 */
public final class BatchPlan {
    private final CutTree tree;
    private final YieldPlan plan;
    private final Layout layout;
    private final Totals totals;
    private final Readings readings;
    private final List<Decision> decisions;
    private final Program.Steps program;
    private final Warnings warnings;
    private final Exactly exactly;
    private final double[][] ofBranch;

    BatchPlan(CutTree tree, Compiled compiled, Warnings warnings, Exactly exactly) {
        this.tree = tree;
        this.plan = compiled.plan();
        this.layout = compiled.layout();
        this.decisions = compiled.decisions();
        this.program = compiled.program();
        this.readings = compiled.readings();
        this.warnings = warnings;
        this.exactly = exactly;
        this.totals = Totals.of(plan, tree.streams());
        this.ofBranch = totals.ends().stream().map(this::ofBranch).toArray(double[][]::new);
    }

    /** How much of what is at the root of each branch goes into a total, as a part of 1. */
    private double[] ofBranch(BitSet ends) {
        Branches branches = layout.branches();
        double[] parts = new double[branches.count()];
        for (int i = 0; i < size(); i++) {
            parts[branches.of()[i]] += ends.get(branches.lines()[i]) ? branches.within()[i] : 0;
        }
        return parts;
    }

    /** The lines with what decides over them. */
    record Compiled(
            YieldPlan plan, Layout layout, List<Decision> decisions, Program.Steps program, Readings readings) {}

    /**
     * Compiles a specification. Costs about what a {@link dev.gambrel.yields.Yields} costs to make.
     *
     * @param tree a tree in which {@link dev.gambrel.tree.rules.TreeRules} finds no error
     * @param working what the batch asks for; of a grade that it does not give each carcass may have its own
     * @param basis what the carcasses were weighed as
     * @return the plan; or errors of {@link dev.gambrel.yields.working.WorkingCode}, or {@link
     *     dev.gambrel.yields.YieldCode#BASIS_DIFFERS}
     */
    public static Result<BatchPlan> of(CutTree tree, Working working, Basis basis) {
        return BatchPlanBuilder.build(tree, working, basis);
    }

    /**
     * What evaluates carcasses, with room of its own.
     *
     * @return a worker for one thread
     */
    public BatchWorker worker() {
        return new BatchWorker(this);
    }

    /**
     * Empty sums for {@link BatchWorker#add}.
     *
     * @return sums over no carcass
     */
    public BatchSums sums() {
        return new BatchSums(this);
    }

    /**
     * How many lines there are.
     *
     * @return 1 or more
     */
    public int size() {
        return plan.size();
    }

    /**
     * What a line stands for. Where ways depend on the carcass the number of its pieces is a placeholder.
     *
     * @param line the line, from 0, as read from top to bottom: each is followed by all below it
     * @return the line's words and place; what stands above it is told by {@link #above}
     */
    public Node node(int line) {
        return plan.node(layout.branches().lines()[line]);
    }

    /**
     * What a line is cut from.
     *
     * @param line the line
     * @return the line above, or -1 of what was weighed
     */
    public int above(int line) {
        int level = node(line).level();
        int above = line - 1;
        while (above >= 0 && node(above).level() >= level) {
            above--;
        }
        return above;
    }

    /**
     * Whether nothing more is taken from a line.
     *
     * @param line the line
     * @return true if it has no parts
     */
    public boolean isEnd(int line) {
        return plan.isEnd(layout.branches().lines()[line]);
    }

    /**
     * Whether a line's weight is known: its share and all above it are stated, estimated or follow from others.
     *
     * @param line the line
     * @return true if its weight is known
     */
    public boolean isStated(int line) {
        return plan.isStated(layout.branches().lines()[line]);
    }

    /**
     * What comes together.
     *
     * @return every outcome, then products, then every stream in the order declared
     */
    public List<BatchTotal> totals() {
        return totals.names();
    }

    /**
     * The grades that the specification declares.
     *
     * @return in the order of {@link Carcasses#grades}
     */
    public List<Grade> grades() {
        return tree.carcass().grades();
    }

    /**
     * What may be measured on a carcass.
     *
     * @return measures in the order declared, then carcass weights on other bases that an equation names
     */
    public List<TradeName> readings() {
        return readings.names();
    }

    /**
     * The specification.
     *
     * @return the tree that was compiled
     */
    public CutTree tree() {
        return tree;
    }

    /**
     * The same carcass by itself: why it is refused, and what is warned of. Makes objects; for the few that are told of.
     *
     * @param carcasses the carcasses
     * @param carcass which of them
     * @param unit in which weights are told
     * @return what {@link dev.gambrel.yields.Yields#forCarcass} finds
     */
    public Result<ExpectedYields> alone(Carcasses carcasses, int carcass, Unit unit) {
        return exactly.of(carcasses, carcass, unit);
    }

    /** Mean and spread of a line for one kilogram at the root of its branch; the spread of one that differs is not worked out. */
    Estimate line(int line) {
        Branches branches = layout.branches();
        return branches.of()[line] == 0
                ? plan.weight(branches.lines()[line])
                : new Estimate(branches.within()[line], Spread.NOT_STATED);
    }

    /** Mean and spread of a total for one kilogram; the spread of one that differs is not worked out. */
    Estimate total(int t) {
        BitSet ends = totals.ends().get(t);
        return differs(t) ? new Estimate(1, Spread.NOT_STATED) : plan.figure(v -> ends.get(v) ? 1 : 0);
    }

    private boolean differs(int t) {
        return IntStream.range(1, ofBranch[t].length).anyMatch(b -> ofBranch[t][b] != 0);
    }

    Layout layout() {
        return layout;
    }

    /** The totals into which lines go that differ from carcass to carcass. */
    int[] differingTotals() {
        return IntStream.range(0, ofBranch.length).filter(this::differs).toArray();
    }

    /** How much of what is at the root of each branch goes into a total, as a part of 1. */
    double[] ofBranch(int t) {
        return ofBranch[t];
    }

    List<Decision> decisions() {
        return decisions;
    }

    Program.Steps program() {
        return program;
    }

    Readings kinds() {
        return readings;
    }

    Warnings warnings() {
        return warnings;
    }

    Exactly exactly() {
        return exactly;
    }
}
