package dev.gambrel.yields.batch;

import dev.gambrel.tree.Home;
import dev.gambrel.tree.Stream;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which ends come together in which total.
 *
 * @param names every outcome, then products, then every stream in the order declared
 * @param ends the lines of each total
 */
record Totals(List<BatchTotal> names, List<BitSet> ends) {
    private static final int PRODUCTS = Outcome.values().length;

    static Totals of(YieldPlan plan, List<Stream> streams) {
        List<BatchTotal> names = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            names.add(new BatchTotal.OfOutcome(outcome));
        }
        names.add(new BatchTotal.Products());
        streams.forEach(stream -> names.add(new BatchTotal.OfStream(stream)));
        List<BitSet> ends = names.stream().map(name -> new BitSet()).toList();
        for (int v = 0; v < plan.size(); v++) {
            if (plan.isEnd(v)) {
                int at = total(plan.node(v), streams);
                ends.get(outcome(plan.node(v), at, streams).ordinal()).set(v);
                if (at >= PRODUCTS) {
                    ends.get(at).set(v);
                }
            }
        }
        return new Totals(List.copyOf(names), ends);
    }

    /** The total of a product or a stream; -1 for what goes to neither. */
    private static int total(Node node, List<Stream> streams) {
        if (node.kind() != Kind.LOSS && node.home() instanceof Home.ToStream to) {
            return IntStream.range(0, streams.size())
                    .filter(i -> streams.get(i).name().equals(to.stream()))
                    .map(i -> PRODUCTS + 1 + i)
                    .findFirst()
                    .orElse(-1);
        }
        return node.kind() != Kind.LOSS && node.home() instanceof Home.Product ? PRODUCTS : -1;
    }

    private static Outcome outcome(Node node, int total, List<Stream> streams) {
        if (node.kind() == Kind.LOSS) {
            return Outcome.LOSS;
        } else if (total < 0) {
            return Outcome.NOT_STATED;
        }
        return total == PRODUCTS
                ? Outcome.SALEABLE
                : Outcome.of(streams.get(total - PRODUCTS - 1).kind());
    }

    /** What each carcass of a block gives to a total that takes some part of each branch. */
    static void weigh(double[] ofBranch, Block block, double[] total) {
        int n = block.size();
        Arrays.fill(total, 0, n, 0);
        for (int b = 0; b < ofBranch.length; b++) {
            double part = ofBranch[b];
            double[] weights = block.weights(b);
            for (int i = 0; part != 0 && i < n; i++) {
                total[i] += part * weights[i];
            }
        }
    }
}
