package dev.gambrel.yields;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.PlanBuilder;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.working.Pairs;
import dev.gambrel.yields.working.PieceWeight;
import dev.gambrel.yields.working.Weights;
import dev.gambrel.yields.working.Worked;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What conditions ask to be weighed, as it is expected of one carcass. */
record ExpectedWeights(CarcassWeight weighed, List<BasisStep> chain, Pairs pairs) implements Weights {
    @Override
    public Quantity carcass() {
        return WeightCheck.after(chain, weighed.mass());
    }

    @Override
    public Function<TreePath, PieceWeight> pieces(Worked soFar) {
        YieldPlan plan = PlanBuilder.build(soFar, chain);
        Map<TreePath, Integer> at = new HashMap<>();
        for (int v = plan.carcass(); v < plan.size(); v++) {
            at.putIfAbsent(plan.node(v).path(), v);
        }
        return cut -> piece(plan, at.get(cut));
    }

    private PieceWeight piece(YieldPlan plan, int v) {
        Node.Pieces pieces = plan.node(v).pieces();
        Estimate all = plan.weight(v).times(weighed.mass().value());
        Estimate one = pairs.onePiece(all, pieces.whole(), pieces.expected());
        return new PieceWeight(
                one.mean(), one.spread() instanceof Spread.Stated stated ? stated.standardDeviation() : 0);
    }
}
