package dev.gambrel.blends;

import dev.gambrel.blends.solver.NoAnswer;
import dev.gambrel.blends.solver.Programme;
import dev.gambrel.blends.solver.Programme.Row;
import dev.gambrel.diagnostic.Diagnostic;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Why an order cannot be met that asks for no more than there is, and for a lean within reach: its limits stand against it, or
 * its promise does.
 */
final class WhyNot {
    /** A part of the batch that counts as missed. */
    private static final double MISSED = 1e-8;

    private final BatchOrder order;
    private final LeastCost leastCost;

    WhyNot(BatchOrder order, LeastCost leastCost) {
        this.order = order;
        this.leastCost = leastCost;
    }

    List<Diagnostic> findings() {
        BatchOrder onAverage =
                new BatchOrder(order.tubs(), order.target(), order.kilograms(), order.limits(), Promise.ON_AVERAGE);
        List<Diagnostic> missed = missedLimits(new BatchModel(onAverage));
        if (missed.isEmpty() && order.promise() instanceof Promise.At promise) {
            return List.of(BlendFindings.promiseOutOfReach(order, promise.chance(), mostPromised()));
        }
        return missed.isEmpty() ? List.of(BlendFindings.noAnswer(order)) : missed;
    }

    /** Lets each limit be missed at a cost, and sees which are when that costs least. */
    private List<Diagnostic> missedLimits(BatchModel model) {
        int limits = order.limits().size();
        List<Double> costs = new ArrayList<>(Collections.nCopies(model.costs().size(), 0.0));
        costs.addAll(Collections.nCopies(limits, 1.0));
        List<Double> most = new ArrayList<>(model.most());
        most.addAll(Collections.nCopies(limits, Double.POSITIVE_INFINITY));
        List<Row> rows = new ArrayList<>();
        rows.add(widened(model.whole(), limits, -1, 0));
        model.target().forEach(row -> rows.add(widened(row, limits, -1, 0)));
        for (int i = 0; i < limits; i++) {
            Limit limit = order.limits().get(i);
            rows.add(widened(model.limit(limit), limits, i, -1 / BatchModel.scale(limit)));
        }
        List<Double> x = leastCost
                .solver()
                .solve(new Programme(costs, most, rows))
                .orElseThrow(() -> new NoAnswer("no plan though every limit may be missed"));
        List<Diagnostic> missed = new ArrayList<>();
        for (int i = 0; i < limits; i++) {
            double gap = x.get(x.size() - limits + i);
            if (gap > MISSED) {
                missed.add(BlendFindings.cannotHold(order.limits().get(i), gap * order.kilograms(), order));
            }
        }
        return missed;
    }

    /** A row with a column for each limit that may be missed. */
    private static Row widened(Row row, int limits, int missed, double factor) {
        List<Double> factors = new ArrayList<>(row.factors());
        for (int i = 0; i < limits; i++) {
            factors.add(i == missed ? factor : 0.0);
        }
        return new Row(factors, row.low(), row.high());
    }

    /** The most lean that can be promised of a batch no leaner than the target allows. */
    private double mostPromised() {
        LeanTarget open =
                new LeanTarget(order.target().judged(), 0, order.target().high());
        BatchModel model =
                new BatchModel(new BatchOrder(order.tubs(), open, order.kilograms(), order.limits(), order.promise()));
        List<Double> lost = model.promised().stream().map(each -> -each).toList();
        return leastCost
                .plan(model, lost)
                .map(x -> -100 * model.programme(lost, List.of()).costOf(x))
                .orElse(0.0);
    }
}
