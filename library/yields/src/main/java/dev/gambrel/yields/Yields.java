package dev.gambrel.yields;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.yields.estimate.EstimatedTree;
import dev.gambrel.yields.estimate.Estimator;
import dev.gambrel.yields.estimate.Measurements;
import dev.gambrel.yields.plan.PlanBuilder;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.working.WaysOfWorking;
import dev.gambrel.yields.working.Weights;
import dev.gambrel.yields.working.Worked;
import dev.gambrel.yields.working.Working;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A specification made ready to answer what a carcass should give.
 *
 * <pre>{@code
 * Yields yields = Yields.of(tree);
 * Result<ExpectedYields> result =
 *         yields.forCarcass(new CarcassWeight(Quantity.of("22.0", Unit.KILOGRAM), Basis.COLD));
 * }</pre>
 *
 * <p>Make it once and ask it often: the figures for one kilogram are worked out when it is made, at O(parts × streams), and
 * a weight only scales them. Only where a condition asks what a piece or the carcass weighs are they worked out for each
 * weight. Immutable; safe between threads.
 */
public final class Yields {
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private final CutTree tree;
    private final Working working;
    private final boolean estimated;
    private final Map<Basis, List<BasisStep>> chains;
    private final Map<Basis, Result<Ready>> ready = new EnumMap<>(Basis.class);

    private record Ready(Worked worked, YieldPlan plan, Totals totals) {}

    private Yields(CutTree tree, Working working) {
        this.tree = tree;
        this.working = working;
        this.chains = BasisChains.of(tree.carcass());
        this.estimated = EstimatedTree.isNeeded(tree);
        if (!tree.isRequirement() && !estimated && !WaysOfWorking.askForWeights(tree)) {
            Result<Worked> worked = WaysOfWorking.settle(tree, working, new Weights.NotAsked());
            chains.forEach((basis, chain) -> ready.put(basis, ready(worked, chain)));
        }
    }

    private static Result<Ready> ready(Result<Worked> worked, List<BasisStep> chain) {
        return worked.value()
                .map(settled -> {
                    YieldPlan plan = PlanBuilder.build(settled, chain);
                    return Result.of(new Ready(settled, plan, Totals.of(plan, settled.tree())), List.of());
                })
                .orElseGet(() -> Result.failed(worked.diagnostics()));
    }

    /**
     * Makes a specification ready, worked as it says by its rules, shares and conditions.
     *
     * <p>Shares of a cut that miss 100 % by no more than the 0.05 point allowed are scaled to close. Where shares are
     * estimated nothing is worked out beforehand: each carcass has figures of its own.
     *
     * @param tree a tree in which {@link dev.gambrel.tree.rules.TreeRules} finds no error
     * @return what answers for it
     * @throws IllegalArgumentException if the shares of a cut do not add up to 100 %, or one spread exceeds the sum of the
     *     others
     */
    public static Yields of(CutTree tree) {
        return of(tree, Working.AS_WRITTEN);
    }

    /**
     * Makes a specification ready for a run that says how its carcasses are worked.
     *
     * @param tree a tree in which {@link dev.gambrel.tree.rules.TreeRules} finds no error
     * @param working which ways are asked for, and which grades are known
     * @return what answers for it; what is wrong with the working is found when it is asked
     * @throws IllegalArgumentException if the shares of a cut do not add up to 100 %, or one spread exceeds the sum of the
     *     others; where a condition asks what something weighs, only when a weight is given
     */
    public static Yields of(CutTree tree, Working working) {
        return new Yields(tree, working);
    }

    /**
     * What a carcass should give.
     *
     * @param weight its weight, on the specification's basis or on one from which the named losses lead to it
     * @return the yields, with a warning if the carcass is outside the weight band; or errors of {@link YieldCode} or
     *     {@link dev.gambrel.yields.working.WorkingCode}, or that the tree is a buyer's requirement
     */
    public Result<ExpectedYields> forCarcass(CarcassWeight weight) {
        List<Diagnostic> wrong =
                tree.isRequirement() ? List.of(WeightCheck.requirement(tree)) : WeightCheck.number(weight.mass());
        if (!wrong.isEmpty()) {
            return Result.failed(wrong);
        }
        if (estimated) {
            return forCarcass(weight, Measurements.NONE);
        }
        if (!chains.containsKey(weight.basis())) {
            return Result.failed(
                    List.of(WeightCheck.basisDiffers(weight, tree.carcass().basis())));
        }
        List<BasisStep> chain = chains.get(weight.basis());
        Result<Ready> on = ready.containsKey(weight.basis()) ? ready.get(weight.basis()) : weighing(weight, chain);
        List<Diagnostic> found = new ArrayList<>(on.diagnostics());
        found.addAll(WeightCheck.band(weight, tree.carcass(), chain));
        return on.value()
                .map(r ->
                        Result.of(new ExpectedYields(r.worked(), weight, r.plan(), r.totals(), working.pairs()), found))
                .orElseGet(() -> Result.failed(found));
    }

    private Result<Ready> weighing(CarcassWeight weight, List<BasisStep> chain) {
        return ready(WaysOfWorking.settle(tree, working, new ExpectedWeights(weight, chain, working.pairs())), chain);
    }

    /**
     * What a carcass should give on which something was measured. Its weight counts as measured too.
     *
     * @param weight its weight, on the specification's basis or on one from which the named losses lead to it
     * @param measured what else was measured on it
     * @return the yields with estimated shares put in, and warnings for readings outside their ranges; or an error of {@link
     *     YieldCode} or of {@link dev.gambrel.yields.estimate.MeasurementCode}, or a rule that the estimated shares break
     */
    public Result<ExpectedYields> forCarcass(CarcassWeight weight, Measurements measured) {
        List<Diagnostic> wrong = new ArrayList<>(WeightCheck.number(weight.mass()));
        Measurements given = measured.weighed(weight.basis(), weight.mass());
        wrong.addAll(Estimator.of(tree).check(given));
        if (Result.hasError(wrong)) {
            return Result.failed(wrong);
        }
        if (!estimated) {
            return forCarcass(weight);
        }
        Result<CutTree> settled = EstimatedTree.of(tree, given);
        List<Diagnostic> found = new ArrayList<>(settled.diagnostics());
        Optional<ExpectedYields> yields = settled.value().flatMap(stated -> {
            Result<ExpectedYields> result = Yields.of(stated, working).forCarcass(weight);
            found.addAll(result.diagnostics());
            return result.value();
        });
        return new Result<>(yields, found);
    }

    /**
     * What several carcasses should give together.
     *
     * @param lot the carcasses and their weights, on the specification's basis or on one from which the named losses lead to it
     * @param doubt how sure the mean shares are
     * @return the yields, with a warning for the lightest and the heaviest carcass if they are outside the weight band; or an
     *     error as {@link #forCarcass(CarcassWeight)} has it, or {@link YieldCode#WORKED_APART} where carcasses of different
     *     weights are worked in different ways
     * @throws IllegalArgumentException if in a cut where no part takes what is left one part's doubt exceeds the sum of the
     *     others
     */
    public Result<CombinedYields> forCarcasses(CarcassLot lot, Doubt doubt) {
        return forCarcasses(lot, Measurements.NONE, doubt);
    }

    /**
     * What several carcasses should give together on each of which the same was measured.
     *
     * @param lot the carcasses and their weights, on the specification's basis or on one from which the named losses lead to it
     * @param measured what else was measured on each
     * @param doubt how sure the mean shares are
     * @return as {@link #forCarcasses(CarcassLot, Doubt)}, or an error as {@link #forCarcass(CarcassWeight, Measurements)} has it
     * @throws IllegalArgumentException if in a cut where no part takes what is left one part's doubt exceeds the sum of the
     *     others
     */
    public Result<CombinedYields> forCarcasses(CarcassLot lot, Measurements measured, Doubt doubt) {
        CarcassWeight lightest = lot.lightest();
        CarcassWeight heaviest = lot.heaviest();
        boolean isOneWeight = lightest.mass().compareTo(heaviest.mass()) == 0;
        if (!isOneWeight && (estimated || WaysOfWorking.askForWeights(tree))) {
            return Result.failed(List.of(WeightCheck.workedApart(lightest, heaviest)));
        }
        Result<ExpectedYields> ofMean = forCarcass(lot.mean(), measured);
        if (isOneWeight || ofMean.value().isEmpty()) {
            return new Result<>(ofMean.value().map(one -> one.combined(lot, doubt)), ofMean.diagnostics());
        }
        List<Diagnostic> found = new ArrayList<>(forCarcass(lightest, measured).diagnostics());
        found.addAll(forCarcass(heaviest, measured).diagnostics());
        return Result.hasError(found)
                ? Result.failed(found)
                : Result.of(ofMean.orElseThrow().combined(lot, doubt), found);
    }

    /**
     * What a carcass from the middle of the specification's weight band should give.
     *
     * @return the yields, or {@link YieldCode#NO_BAND} where no band is stated
     */
    public Result<ExpectedYields> forTypicalCarcass() {
        return forTypicalCarcass(Measurements.NONE);
    }

    /**
     * What a carcass from the middle of the specification's weight band should give on which something was measured.
     *
     * @param measured what was measured on it
     * @return as {@link #forCarcass(CarcassWeight, Measurements)}, or {@link YieldCode#NO_BAND} where no band is stated
     */
    public Result<ExpectedYields> forTypicalCarcass(Measurements measured) {
        if (tree.isRequirement()) {
            return Result.failed(List.of(WeightCheck.requirement(tree)));
        }
        return tree.carcass().band() instanceof WeightBand.Stated band
                ? forCarcass(new CarcassWeight(middle(band), tree.carcass().basis()), measured)
                : Result.failed(List.of(WeightCheck.noBand()));
    }

    private static Quantity middle(WeightBand.Stated band) {
        boolean alike = band.low().unit() == band.high().unit();
        Unit unit = alike ? band.low().unit() : Unit.KILOGRAM;
        BigDecimal low = alike ? band.low().amount() : band.low().common();
        BigDecimal high = alike ? band.high().amount() : band.high().common();
        return new Quantity(low.add(high).multiply(HALF).round(MathContext.DECIMAL128), unit);
    }
}
