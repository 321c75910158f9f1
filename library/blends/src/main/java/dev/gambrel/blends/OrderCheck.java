package dev.gambrel.blends;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.yields.figure.Spread;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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
            wrong.add(BlendFindings.outOfReach(order.target(), extreme(order, 1), extreme(order, -1)));
        }
        return wrong;
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
        return order.target().low() <= extreme(order, -1) + NEAR
                && order.target().high() >= extreme(order, 1) - NEAR;
    }

    /** The fattest (1) or the leanest (-1) batch of the weight that the stocks give. */
    private static double extreme(BatchOrder order, int direction) {
        List<Tub> inOrder = order.tubs().all().stream()
                .sorted(Comparator.comparingDouble(tub -> direction * tub.percent()))
                .toList();
        double wanted = order.kilograms();
        double leanWeight = 0;
        for (Tub tub : inOrder) {
            double taken = Math.min(wanted, tub.kilograms());
            leanWeight += taken * tub.percent();
            wanted -= taken;
        }
        return leanWeight / (order.kilograms() - wanted);
    }
}
