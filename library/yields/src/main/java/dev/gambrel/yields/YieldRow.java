package dev.gambrel.yields;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Home;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.working.Pairs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of the expected yields: the carcass, or something that leaves a cut. A small view, made on demand.
 *
 * <p>A cut that trims, bones or losses come off has a line for the cut as it enters the block, and among its parts one of
 * kind {@link Kind#TRIMMED} for what is left.
 */
public final class YieldRow {
    private final YieldPlan plan;
    private final int index;
    private final double kilograms;
    private final Pairs pairs;

    YieldRow(YieldPlan plan, int index, double kilograms, Pairs pairs) {
        this.plan = plan;
        this.index = index;
        this.kilograms = kilograms;
        this.pairs = pairs;
    }

    int index() {
        return index;
    }

    private Node node() {
        return plan.node(index);
    }

    /**
     * What the line is.
     *
     * @return its kind
     */
    public Kind kind() {
        return node().kind();
    }

    /**
     * What to call it in print.
     *
     * @return for example "topside", "topside, trimmed" or "carcass, cold"
     */
    public String name() {
        return node().name();
    }

    /**
     * Its address in the tree; a trimmed cut has that of the cut, and every carcass line that of the carcass.
     *
     * @return the path
     */
    public TreePath path() {
        return node().path();
    }

    /**
     * How deep it lies.
     *
     * @return 0 for what was weighed
     */
    public int level() {
        return node().level();
    }

    /**
     * How many pieces one carcass gives.
     *
     * @return 1 or 2; what is expected where only some of them are worked in this way, such as 1.4 of 2
     */
    public double pieces() {
        return node().pieces().expected();
    }

    /** How many pieces of it a carcass has, whichever way they are worked: 1 or 2. */
    int ofCarcass() {
        return node().pieces().whole();
    }

    /**
     * The weight of all pieces of the carcass together: of both legs.
     *
     * @return kilograms, or nothing where no share is stated
     */
    public Optional<Estimate> allPieces() {
        return plan.isStated(index) ? Optional.of(plan.weight(index).times(kilograms)) : Optional.empty();
    }

    /**
     * The weight of one piece: of one leg. It has its part of the mean; its standard deviation is what {@link Pairs} makes of
     * that of all, its part of it where pairs are alike.
     *
     * @return kilograms, or nothing where no share is stated
     */
    public Optional<Estimate> onePiece() {
        return allPieces().map(all -> pairs.onePiece(all, ofCarcass(), pieces()));
    }

    /**
     * Its share of the cut above, all pieces together.
     *
     * @return per cent, or nothing for what was weighed and where no share is stated
     */
    public OptionalDouble percentOfCutAbove() {
        return plan.isShareStated(index) ? OptionalDouble.of(100 * plan.share(index)) : OptionalDouble.empty();
    }

    /**
     * Its mean share of the carcass on the specification's own basis.
     *
     * @return per cent, or nothing for lines above that carcass and where no share is stated
     */
    public OptionalDouble percentOfCarcass() {
        double carcass = plan.mean(plan.carcass());
        boolean within =
                index == plan.carcass() || level() > plan.node(plan.carcass()).level();
        return within && plan.isStated(index) && carcass > 0
                ? OptionalDouble.of(100 * plan.mean(index) / carcass)
                : OptionalDouble.empty();
    }

    /**
     * Whether nothing more is taken from it: its weight goes whole to its home, or is lost.
     *
     * @return true if it has no parts
     */
    public boolean isEnd() {
        return plan.isEnd(index);
    }

    /**
     * Where its weight goes.
     *
     * @return its home, or nothing if it is a loss or is cut further
     */
    public Optional<Home> home() {
        return isEnd() && kind() != Kind.LOSS ? Optional.of(node().home()) : Optional.empty();
    }

    /**
     * What leaves it.
     *
     * @return its parts in the order written; empty for an end
     */
    public List<YieldRow> parts() {
        List<YieldRow> parts = new ArrayList<>(plan.firstPart(index + 1) - plan.firstPart(index));
        for (int part = plan.firstPart(index); part < plan.firstPart(index + 1); part++) {
            parts.add(new YieldRow(plan, part, kilograms, pairs));
        }
        return parts;
    }

    @Override
    public String toString() {
        return name();
    }
}
