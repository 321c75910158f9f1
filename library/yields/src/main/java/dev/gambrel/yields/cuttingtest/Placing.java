package dev.gambrel.yields.cuttingtest;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.yields.cuttingtest.PartReading.State;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.MassTree;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** Which line of the plan a reading is of. */
final class Placing {
    private final Map<TreePath, Integer> whole = new HashMap<>();
    private final Map<TreePath, Integer> trimmed = new HashMap<>();
    private final Map<Integer, PartReading> readings = new HashMap<>();
    private final List<PartReading> unplaced = new ArrayList<>();

    Placing(YieldPlan plan, List<PartReading> sheet) {
        for (int v = 0; v < plan.size(); v++) {
            boolean isTrimmed = plan.node(v).kind() == Kind.TRIMMED;
            (isTrimmed ? trimmed : whole).putIfAbsent(plan.node(v).path(), v);
            if (plan.node(v).kind() == Kind.CUT && plan.isEnd(v)) {
                trimmed.put(plan.node(v).path(), v);
            }
        }
        sheet.forEach(this::place);
    }

    private void place(PartReading reading) {
        OptionalInt node = node(reading.part(), reading.state());
        if (node.isEmpty()) {
            unplaced.add(reading);
        } else if (readings.putIfAbsent(node.getAsInt(), reading) != null) {
            throw new IllegalArgumentException("two readings of " + plainly(reading.part()));
        }
    }

    private static String plainly(TreePath part) {
        return part.names().isEmpty() ? "the carcass" : part.toString();
    }

    OptionalInt node(TreePath part, State state) {
        Integer node = (state == State.WHOLE ? whole : trimmed).get(part);
        return node == null ? OptionalInt.empty() : OptionalInt.of(node);
    }

    Map<Integer, PartReading> readings() {
        return readings;
    }

    List<PartReading> unplaced() {
        return unplaced;
    }

    static MassTree tree(YieldPlan plan) {
        int[] above = new int[plan.size()];
        for (int v = 0; v < above.length; v++) {
            above[v] = plan.node(v).above();
        }
        return MassTree.of(above);
    }
}
