package dev.gambrel.yields.cuttingtest.wording;

import dev.gambrel.yields.plan.YieldPlan;
import java.util.List;
import java.util.stream.Collectors;

/** What lines of a plan are called in a sentence. */
public final class PartNames {
    private static final int MOST = 6;

    private PartNames() {}

    /**
     * What a line is called: its address, and whether it is trimmed.
     *
     * @param plan the specification as flat arrays
     * @param node a line of it
     * @return for example "leg / topside, trimmed"
     */
    public static String address(YieldPlan plan, int node) {
        return plan.node(node).address();
    }

    /**
     * All of several lines.
     *
     * @param plan the specification as flat arrays
     * @param nodes lines of it
     * @return their addresses in that order
     */
    public static String all(YieldPlan plan, List<Integer> nodes) {
        return nodes.stream().map(v -> address(plan, v)).collect(Collectors.joining("; "));
    }

    /**
     * The first of several lines, where the list says no more than that nothing tells them apart.
     *
     * @param plan the specification as flat arrays
     * @param nodes lines of it
     * @return the addresses of the first {@value #MOST}, and how many there are beside them
     */
    public static String first(YieldPlan plan, List<Integer> nodes) {
        int more = nodes.size() - MOST;
        return more <= 1 ? all(plan, nodes) : all(plan, nodes.subList(0, MOST)) + "; and " + more + " more beside them";
    }
}
