package dev.gambrel.yields.cuttingtest;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Which parts of a sheet are valued at which price, each gram once at most. */
final class Valuation {
    private final CuttingTest test;
    private final YieldPlan plan;
    private final Map<Integer, BigDecimal> prices = new HashMap<>();
    private final boolean[] hasWorth;
    private final boolean[] hasPriceBelow;
    private final double[] coefficients;
    private final List<Integer> valued = new ArrayList<>();
    private final List<Integer> withoutPrice = new ArrayList<>();
    private final List<Integer> notKnown = new ArrayList<>();

    Valuation(CuttingTest test, List<PartPrice> prices) {
        this.test = test;
        this.plan = test.plan();
        this.hasWorth = new boolean[plan.size()];
        this.hasPriceBelow = new boolean[plan.size()];
        this.coefficients = new double[plan.size()];
        prices.forEach(this::take);
        for (int v = plan.size() - 1; v >= 0; v--) {
            hasWorth[v] = isByParts(v) || isWhole(v);
            hasPriceBelow[v] = parts(v).anyMatch(part -> this.prices.containsKey(part) || hasPriceBelow[part]);
        }
        value(0);
    }

    private void take(PartPrice price) {
        OptionalInt node = test.node(price.part(), price.state());
        if (node.isEmpty()) {
            return;
        }
        if (isLoss(node.getAsInt())) {
            throw new IllegalArgumentException("a loss has no price: " + price.part());
        }
        if (prices.put(node.getAsInt(), price.perKilogram()) != null) {
            throw new IllegalArgumentException("two prices of " + price.part());
        }
    }

    private boolean isLoss(int v) {
        return plan.node(v).kind() == Kind.LOSS;
    }

    /** What can be sold of a cut. */
    private IntStream parts(int v) {
        return IntStream.range(plan.firstPart(v), plan.firstPart(v + 1)).filter(part -> !isLoss(part));
    }

    private boolean isByParts(int v) {
        return parts(v).findAny().isPresent() && parts(v).allMatch(part -> hasWorth[part]);
    }

    private boolean isWhole(int v) {
        return prices.containsKey(v) && test.reconciled().weight(v) instanceof Reconciled.Weight;
    }

    private void value(int v) {
        if (isByParts(v)) {
            parts(v).forEach(this::value);
        } else if (isWhole(v)) {
            valued.add(v);
            coefficients[v] = prices.get(v).doubleValue();
        } else if (hasPriceBelow[v]) {
            parts(v).forEach(this::value);
        } else {
            (prices.containsKey(v) ? notKnown : withoutPrice).add(v);
        }
    }

    List<Worth.Line> lines(double carcass) {
        return valued.stream().map(v -> line(v, carcass)).toList();
    }

    private Worth.Line line(int v, double carcass) {
        boolean isStated = plan.isStated(v) && !Double.isNaN(carcass);
        return new Worth.Line(
                v,
                !plan.isEnd(v),
                prices.get(v),
                ((Reconciled.Weight) test.reconciled().weight(v)).estimate(),
                isStated ? plan.weight(v).times(carcass) : Estimate.exactly(0),
                isStated);
    }

    /** The price of a line that is valued; 0 for any other. */
    double coefficient(int v) {
        return coefficients[v];
    }

    List<Integer> notUsed() {
        TreeSet<Integer> unused = new TreeSet<>(prices.keySet());
        valued.forEach(unused::remove);
        notKnown.forEach(unused::remove);
        return List.copyOf(unused);
    }

    List<Integer> withoutPrice() {
        return withoutPrice;
    }

    List<Integer> notKnown() {
        return notKnown;
    }
}
