package dev.gambrel.yields;

import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Stream;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What comes together over the whole tree, for one kilogram weighed.
 *
 * @param outcomes every outcome
 * @param products what is sold under its own name
 * @param streams every stream declared, in the order declared
 */
record Totals(Map<Outcome, Estimate> outcomes, Estimate products, List<StreamYield> streams) {
    private static final int PRODUCT = -1;
    private static final int LOST = -2;
    private static final int NOWHERE = -3;
    private static final int CUT_FURTHER = -4;

    static Totals of(YieldPlan plan, CutTree tree) {
        int[] home = homes(plan, tree.streams());
        Map<Outcome, Estimate> outcomes = new EnumMap<>(Outcome.class);
        for (Outcome each : Outcome.values()) {
            outcomes.put(each, plan.figure(v -> has(each, home[v], tree.streams()) ? 1 : 0));
        }
        BitSet used = new BitSet();
        IntStream.of(home).filter(h -> h >= 0).forEach(used::set);
        List<StreamYield> streams = new ArrayList<>();
        for (int i = 0; i < tree.streams().size(); i++) {
            int stream = i;
            Estimate weight = used.get(i) ? plan.figure(v -> home[v] == stream ? 1 : 0) : Estimate.exactly(0);
            streams.add(new StreamYield(tree.streams().get(i), weight));
        }
        return new Totals(outcomes, plan.figure(v -> home[v] == PRODUCT ? 1 : 0), List.copyOf(streams));
    }

    /** For each part the index of its stream, or one of the negative marks. */
    private static int[] homes(YieldPlan plan, List<Stream> streams) {
        Map<String, Integer> byName = new HashMap<>();
        for (int i = 0; i < streams.size(); i++) {
            byName.putIfAbsent(streams.get(i).name().key(), i);
        }
        int[] home = new int[plan.size()];
        for (int v = 0; v < home.length; v++) {
            home[v] = plan.isEnd(v) ? home(plan.node(v), byName) : CUT_FURTHER;
        }
        return home;
    }

    private static int home(Node node, Map<String, Integer> byName) {
        if (node.kind() == Kind.LOSS) {
            return LOST;
        }
        if (node.home() instanceof Home.ToStream to) {
            return byName.getOrDefault(to.stream().key(), NOWHERE);
        }
        return node.home() instanceof Home.Product ? PRODUCT : NOWHERE;
    }

    private static boolean has(Outcome outcome, int home, List<Stream> streams) {
        return switch (home) {
            case PRODUCT -> outcome == Outcome.SALEABLE;
            case LOST -> outcome == Outcome.LOSS;
            case NOWHERE -> outcome == Outcome.NOT_STATED;
            case CUT_FURTHER -> false;
            default -> outcome == Outcome.of(streams.get(home).kind());
        };
    }
}
