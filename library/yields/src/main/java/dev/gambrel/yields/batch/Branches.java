package dev.gambrel.yields.batch;

import dev.gambrel.yields.plan.YieldPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The lines of a plan in branches within which every weight is a fixed part of the weight at the root. The first branch hangs
 * from what was weighed; each part whose share of its cut differs from carcass to carcass is the root of another. So a carcass
 * needs one factor for each branch, and not one for each line.
 *
 * <p>Lines are numbered as they are read: each is followed by all below it.
 *
 * @param lines the line of the plan for each line as read
 * @param of the branch of each line as read
 * @param within how much of the root of its branch each line as read is, as a part of 1
 * @param roots the root of each branch as a line of the plan, parents first
 * @param above the branch that each branch hangs from
 * @param lead how much of the root of that branch the line is that it hangs from
 */
record Branches(int[] lines, int[] of, double[] within, int[] roots, int[] above, double[] lead) {
    /**
     * Finds the branches.
     *
     * @param plan the plan
     * @param decisions those that decide over the shares of a cut
     */
    static Branches of(YieldPlan plan, List<Decision> decisions) {
        int[] roots = IntStream.concat(
                        IntStream.of(0),
                        decisions.stream().flatMapToInt(decision -> IntStream.of(decision.differing())))
                .distinct()
                .sorted()
                .toArray();
        int[] of = new int[plan.size()];
        double[] within = new double[plan.size()];
        int[] above = new int[roots.length];
        double[] lead = new double[roots.length];
        int next = 0;
        for (int v = 0; v < plan.size(); v++) {
            int parent = Math.max(0, plan.node(v).above());
            if (next < roots.length && roots[next] == v) {
                above[next] = of[parent];
                lead[next] = v == 0 ? 1 : within[parent];
                of[v] = next++;
                within[v] = 1;
            } else {
                of[v] = of[parent];
                within[v] = within[parent] * plan.share(v);
            }
        }
        int[] lines = asRead(plan);
        return new Branches(
                lines,
                IntStream.of(lines).map(v -> of[v]).toArray(),
                IntStream.of(lines).mapToDouble(v -> within[v]).toArray(),
                roots,
                above,
                lead);
    }

    private static int[] asRead(YieldPlan plan) {
        int[] lines = new int[plan.size()];
        int[] waiting = new int[plan.size()];
        int top = 0;
        for (int i = 0; i < lines.length; i++) {
            int v = waiting[top--];
            lines[i] = v;
            for (int part = plan.firstPart(v + 1) - 1; part >= plan.firstPart(v); part--) {
                waiting[++top] = part;
            }
        }
        return lines;
    }

    int count() {
        return roots.length;
    }

    /** The lines of one branch that follow each other: the first, and the one after the last. */
    List<int[]> stretches() {
        List<int[]> stretches = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= of.length; i++) {
            if (i == of.length || of[i] != of[from]) {
                stretches.add(new int[] {from, i});
                from = i;
            }
        }
        return stretches;
    }

    /** What one kilogram gives at the root of each branch, from the shares of one carcass. */
    void factors(double[] share, double[] factor) {
        factor[0] = 1;
        for (int b = 1; b < roots.length; b++) {
            factor[b] = factor[above[b]] * lead[b] * share[roots[b]];
        }
    }
}
