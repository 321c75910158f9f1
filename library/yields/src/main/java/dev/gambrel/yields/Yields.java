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
 * a weight only scales them. Immutable; safe between threads.
 */
public final class Yields {
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private final CutTree tree;
    private final boolean estimated;
    private final Map<Basis, Ready> ready = new EnumMap<>(Basis.class);

    private record Ready(List<BasisStep> chain, YieldPlan plan, Totals totals) {}

    private Yields(CutTree tree) {
        this.tree = tree;
        this.estimated = EstimatedTree.isNeeded(tree);
        if (estimated) {
            return;
        }
        BasisChains.of(tree.carcass()).forEach((basis, chain) -> {
            YieldPlan plan = PlanBuilder.build(tree, chain);
            ready.put(basis, new Ready(chain, plan, Totals.of(plan, tree)));
        });
    }

    /**
     * Makes a specification ready.
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
        return new Yields(tree);
    }

    /**
     * What a carcass should give.
     *
     * @param weight its weight, on the specification's basis or on one from which the named losses lead to it
     * @return the yields, with a warning if the carcass is outside the weight band; or an error of {@link YieldCode}
     */
    public Result<ExpectedYields> forCarcass(CarcassWeight weight) {
        List<Diagnostic> wrong = WeightCheck.number(weight.mass());
        if (!wrong.isEmpty()) {
            return Result.failed(wrong);
        }
        if (estimated) {
            return forCarcass(weight, Measurements.NONE);
        }
        Ready on = ready.get(weight.basis());
        if (on == null) {
            return Result.failed(
                    List.of(WeightCheck.basisDiffers(weight, tree.carcass().basis())));
        }
        return Result.of(
                new ExpectedYields(tree, weight, on.plan(), on.totals()),
                WeightCheck.band(weight, tree.carcass(), on.chain()));
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
            Result<ExpectedYields> result = Yields.of(stated).forCarcass(weight);
            found.addAll(result.diagnostics());
            return result.value();
        });
        return new Result<>(yields, found);
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
