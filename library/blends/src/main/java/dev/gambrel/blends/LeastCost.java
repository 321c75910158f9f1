package dev.gambrel.blends;

import dev.gambrel.blends.solver.NoAnswer;
import dev.gambrel.blends.solver.Programme;
import dev.gambrel.blends.solver.Solver;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest batch of a given weight from any number of tubs: the blending problem, a linear programme (G. B. Dantzig, "Linear
 * Programming and Extensions", 1963).
 *
 * <p>With one row of lean the best blend mixes at most two tubs strictly between nothing and all. Each plan is worked out again in
 * our own arithmetic. A promise is reached by cutting planes: the spread of the blend is convex, and a tangent at each plan so far
 * holds it up (J. E. Kelley, "The cutting-plane method for solving convex programs", Journal of the SIAM 8, 1960, from memory).
 */
public final class LeastCost {
    private static final int MOST_CUTS = 200;
    /** A cut is a row with a figure for each tub: how many figures they may have together, a few seconds' work. */
    private static final int MOST_FIGURES = 12_000;
    /** How near the spread is pushed to its true value, as a part of 1: a millionth of a point. */
    private static final double NEAR = 1e-8;
    /** The step to either side in which a point of lean is priced, in points. */
    private static final double STEP = 0.1;
    /** What distance from the target costs, in parts of the dearest tub, to tell equals apart. */
    private static final double TRACE = 1e-6;
    /** Costs nearer to each other than this part of the dearest tub are one cost. */
    private static final double AS_CHEAP = 1e-11;
    /** Plans nearer to each other than this are one plan. */
    private static final double SAME_PLAN = 1e-7;

    private final Solver solver;

    /** With the solver that comes with the library. */
    public LeastCost() {
        this(Solver.standard());
    }

    /**
     * With another solver.
     *
     * @param solver solves linear programmes
     */
    public LeastCost(Solver solver) {
        this.solver = solver;
    }

    /**
     * The cheapest batch. Of equally cheap ones it is that of tubs nearest to the target, then of names first in order. What a
     * point of lean is worth is told for a target a tenth of a point to either side.
     *
     * @param order what is to be made
     * @return the batch, or the finding of {@link BlendCode} that says which wish cannot be met and by how much
     */
    public Result<CheapestBatch> of(BatchOrder order) {
        List<Diagnostic> wrong = OrderCheck.of(order);
        if (!wrong.isEmpty()) {
            return Result.failed(wrong);
        }
        try {
            return cheapest(new BatchModel(order))
                    .map(blend -> Result.of(priced(order, blend), List.of()))
                    .orElseGet(() -> Result.failed(new WhyNot(order, this).findings()));
        } catch (CutsWithoutEnd tooManyTubs) {
            return Result.failed(List.of(BlendFindings.cutsWithoutEnd(order)));
        } catch (NoAnswer givenUp) {
            return Result.failed(List.of(BlendFindings.noAnswer(order)));
        }
    }

    private CheapestBatch priced(BatchOrder order, Blend blend) {
        return new CheapestBatch(blend, point(order, blend, STEP), point(order, blend, -STEP));
    }

    private PointOfLean point(BatchOrder order, Blend blend, double step) {
        if (blend.cost().isEmpty()) {
            return new PointOfLean.NoPrices();
        }
        BatchModel moved = new BatchModel(order.leanerBy(step));
        if (!OrderCheck.isWithinReach(moved.order())) {
            return new PointOfLean.NotPossible();
        }
        double now = blend.cost().getAsDouble() / blend.kilograms();
        return plan(moved, moved.costs())
                .<PointOfLean>map(x -> new PointOfLean.Costs((costOf(moved, x) - now) / STEP))
                .orElseGet(PointOfLean.NotPossible::new);
    }

    /** What a kilogram of a plan costs. */
    private static double costOf(BatchModel model, List<Double> x) {
        return model.dearest() * model.programme(model.costs(), List.of()).costOf(x);
    }

    private Optional<Blend> cheapest(BatchModel model) {
        List<Double> costs = model.costs();
        return plan(model, costs).map(x -> model.blend(ofEquals(model, costs, x)));
    }

    /** Where another plan costs no more and is nearer to the target, that one: it is found by letting distance cost a trace. */
    private List<Double> ofEquals(BatchModel model, List<Double> costs, List<Double> x) {
        List<Double> distances = model.distances();
        List<Double> both = new ArrayList<>();
        for (int i = 0; i < costs.size(); i++) {
            both.add(costs.get(i) + TRACE * distances.get(i));
        }
        Programme plain = model.programme(costs, List.of());
        double most = plain.costOf(x) + AS_CHEAP;
        return plan(model, both)
                .filter(other -> isOther(x, other) && plain.costOf(other) <= most)
                .orElse(x);
    }

    private static boolean isOther(List<Double> x, List<Double> other) {
        for (int i = 0; i < x.size() - 1; i++) {
            if (Math.abs(x.get(i) - other.get(i)) > SAME_PLAN) {
                return true;
            }
        }
        return false;
    }

    /** Solves, and cuts where a plan takes its lean for steadier than it is, until it does not. */
    Optional<List<Double>> plan(BatchModel model, List<Double> costs) {
        List<Programme.Row> cuts = new ArrayList<>();
        int most = Math.min(MOST_CUTS, MOST_FIGURES / costs.size());
        for (int cut = 0; cut <= most; cut++) {
            Optional<List<Double>> x = solver.solve(model.programme(costs, cuts));
            if (x.isEmpty() || !isTooBold(model, x.get())) {
                return x;
            }
            cuts.add(model.cutAt(x.get()));
        }
        if (most < MOST_CUTS) {
            throw new CutsWithoutEnd();
        }
        throw new NoAnswer("the cuts do not come to an end");
    }

    private static boolean isTooBold(BatchModel model, List<Double> x) {
        double told = x.get(x.size() - 1);
        return model.order().promise().deviations() > 0 && model.spread(x) > told + NEAR;
    }

    Solver solver() {
        return solver;
    }
}
