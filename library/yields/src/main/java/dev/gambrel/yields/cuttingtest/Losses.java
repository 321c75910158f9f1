package dev.gambrel.yields.cuttingtest;

import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Readings;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What is known beforehand of losses that nobody weighed: their share, with its spread, of what they are lost from. What that weighs need
 * be known only roughly, since being wrong by a part of 1 moves the loss by the same part of itself: it is what the specification makes
 * of a carcass of the size that half of the readings lie below, so that one wrong reading moves nothing. Its own reading is taken where
 * its share is not stated. A loss whose spread is not stated is not known.
 */
final class Losses {
    private final YieldPlan plan;
    private final Readings weighed;
    private final double[] nominal;

    Losses(YieldPlan plan, Readings weighed) {
        this.plan = plan;
        this.weighed = weighed;
        this.nominal = new double[plan.size()];
        double carcass = carcass();
        for (int v = 0; v < nominal.length; v++) {
            nominal[v] = plan.isStated(v) ? carcass * plan.mean(v) : weighed.weight(v);
        }
    }

    private double carcass() {
        double[] sizes = weighed.weighed()
                .filter(v -> plan.isStated(v) && plan.mean(v) > 0)
                .mapToDouble(v -> weighed.weight(v) / plan.mean(v))
                .sorted()
                .toArray();
        int half = sizes.length / 2;
        return sizes.length == 0 ? Double.NaN : (sizes[half] + sizes[sizes.length - 1 - half]) / 2;
    }

    /** The readings with the losses that are expected. */
    Readings expected() {
        double[] weights = column(weighed::weight);
        double[] variances = column(weighed::variance);
        for (int v : open()) {
            double whole = nominal[plan.node(v).above()];
            double loss = whole * plan.share(v);
            double variance = whole * whole * plan.shareVariance(v);
            if (plan.isShareStated(v) && Double.isFinite(loss) && Double.isFinite(variance)) {
                weights[v] = loss;
                variances[v] = variance;
            }
        }
        return Readings.of(weights, variances);
    }

    /** The readings as if nothing were ever lost: then no cut gives more than it weighs. */
    Readings none() {
        double[] weights = column(weighed::weight);
        double[] variances = column(weighed::variance);
        for (int v : open()) {
            weights[v] = 0;
            variances[v] = 0;
        }
        return Readings.of(weights, variances);
    }

    private double[] column(IntToDoubleFunction figure) {
        return IntStream.range(0, plan.size()).mapToDouble(figure).toArray();
    }

    private List<Integer> open() {
        return IntStream.range(1, plan.size())
                .filter(v -> plan.node(v).kind() == Kind.LOSS && plan.isEnd(v) && !weighed.isWeighed(v))
                .boxed()
                .toList();
    }
}
