package dev.gambrel.blends;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.yields.figure.Spread;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What can be said of an order before anything is solved. */
final class OrderCheck {
    /** Two weights that a scale cannot tell apart. */
    private static final double NEAR = 1e-9;

    private OrderCheck() {}

    static List<Diagnostic> of(BatchOrder order) {
        List<Diagnostic> wrong = new ArrayList<>();
        Tub first = order.tubs().all().get(0);
        if (order.tubs().judged() != order.target().judged()) {
            wrong.add(BlendFindings.judgedApart(order.target(), first));
        }
        addPrices(order.tubs(), wrong);
        if (order.promise().deviations() > 0) {
            order.tubs().all().stream()
                    .filter(tub -> tub.lean().percent().spread() instanceof Spread.NotStated)
                    .forEach(tub -> wrong.add(BlendFindings.spreadMissing(tub)));
        }
        double stock = order.tubs().kilograms();
        if (order.kilograms() > stock * (1 + NEAR)) {
            wrong.add(BlendFindings.notEnough(order.kilograms(), stock));
        } else if (wrong.isEmpty() && !isWithinReach(order)) {
            wrong.add(BlendFindings.outOfReach(order.target(), fattest(order), leanest(order)));
        } else if (wrong.isEmpty()) {
            addLimits(order, wrong);
        }
        return wrong;
    }

    /** Limits that no batch of the weight holds, whatever its lean. */
    private static void addLimits(BatchOrder order, List<Diagnostic> wrong) {
        for (Limit limit : order.limits()) {
            double gap = least(order, limit::factor) - limit.most();
            if (gap > NEAR * order.kilograms() * BatchModel.scale(limit)) {
                wrong.add(BlendFindings.cannotHold(limit, gap, order));
            }
        }
    }

    private static void addPrices(Tubs tubs, List<Diagnostic> wrong) {
        for (Tub with : tubs.all()) {
            if (with.price() instanceof Price.PerKilogram) {
                tubs.all().stream()
                        .filter(tub -> tub.price() instanceof Price.NotStated)
                        .forEach(tub -> wrong.add(BlendFindings.priceMissing(tub, with)));
                return;
            }
        }
    }

    static boolean isWithinReach(BatchOrder order) {
        return order.target().low() <= leanest(order) + NEAR && order.target().high() >= fattest(order) - NEAR;
    }

    private static double fattest(BatchOrder order) {
        return least(order, Tub::percent) / order.kilograms();
    }

    private static double leanest(BatchOrder order) {
        return -least(order, tub -> -tub.percent()) / order.kilograms();
    }

    /** The least Σ value x of all batches of the weight that the stocks give. */
    private static double least(BatchOrder order, ToDoubleFunction<Tub> value) {
        List<Tub> inOrder = order.tubs().all().stream()
                .sorted(Comparator.comparingDouble(value))
                .toList();
        double wanted = order.kilograms();
        double sum = 0;
        for (Tub tub : inOrder) {
            double taken = Math.min(wanted, tub.kilograms());
            sum += taken * value.applyAsDouble(tub);
            wanted -= taken;
        }
        return sum;
    }
}
