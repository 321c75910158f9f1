package dev.gambrel.reports.picture;

import dev.gambrel.reports.picture.TreeRow.How;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.ReadingTest;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The lines of a tree in order: a cut, then its parts. Parts that were not weighed apart share a line. */
final class TreeRows {
    private static final int MOST_NAMES = 6;

    private final CuttingTest test;
    private final YieldPlan plan;
    private final double carcass;
    private final boolean[] isKnownBelow;
    private final Map<Integer, PartComparison> weighed = new HashMap<>();
    private final List<TreeRow> rows = new ArrayList<>();

    private TreeRows(CuttingTest test, List<PartComparison> weighed, double carcass) {
        this.test = test;
        this.plan = test.plan();
        this.carcass = carcass;
        this.isKnownBelow = new boolean[plan.size()];
        weighed.forEach(part -> this.weighed.put(part.node(), part));
        for (int v = plan.size() - 1; v > 0; v--) {
            isKnownBelow[plan.node(v).above()] |= isKnown(v) || isKnownBelow[v];
        }
    }

    /** All lines; what is expected is taken of the carcass as it was weighed, as in the list of what was weighed. */
    static List<TreeRow> of(CuttingTest test, List<PartComparison> weighed, double carcass) {
        TreeRows rows = new TreeRows(test, weighed, carcass);
        rows.add(0);
        return List.copyOf(rows.rows);
    }

    private boolean isKnown(int v) {
        return test.reconciled().weight(v) instanceof Reconciled.Weight;
    }

    private void add(int v) {
        int level = plan.node(v).level();
        String name = plan.node(v).name();
        if (weighed.containsKey(v)) {
            rows.add(new TreeRow.Known(level, name, true, weighed.get(v), How.WEIGHED));
        } else if (test.reconciled().weight(v) instanceof Reconciled.Weight known) {
            rows.add(new TreeRow.Known(level, name, true, known(v, known.estimate()), how(v)));
        } else {
            rows.add(new TreeRow.Unknown(level, name, "not known: neither weighed nor to be worked out"));
        }
        List<Integer> open = new ArrayList<>();
        for (int part = plan.firstPart(v); part < plan.firstPart(v + 1); part++) {
            if (isKnown(part) || isKnownBelow[part]) {
                add(part);
            }
            if (!isKnown(part)) {
                open.add(part);
            }
        }
        if (!open.isEmpty()) {
            addOpen(v, open);
        }
    }

    /** What all parts of a cut weigh together is told already: it is the cut. */
    private void addOpen(int cut, List<Integer> parts) {
        int level = plan.node(cut).level() + 1;
        boolean isWhole = parts.size() == plan.firstPart(cut + 1) - plan.firstPart(cut);
        Reconciled weight = test.reconciled().weight(parts.get(0));
        if (weight instanceof Reconciled.OnlyTogether together && !isWhole) {
            PartComparison sum = together(cut, Set.copyOf(parts), together.sum());
            rows.add(new TreeRow.Known(level, "not weighed apart: " + names(parts), false, sum, How.WORKED_OUT));
        } else {
            rows.add(new TreeRow.Unknown(level, names(parts), "not weighed apart"));
        }
    }

    private How how(int v) {
        if (v == 0) {
            return How.WEIGHED;
        }
        boolean isAssumed =
                plan.node(v).kind() == Kind.LOSS && test.reconciled().reading(v) instanceof ReadingTest.NotChecked;
        return isAssumed ? How.ASSUMED : How.WORKED_OUT;
    }

    /** Of the carcass nothing is expected but what it weighs. */
    private PartComparison known(int v, Estimate weight) {
        return new PartComparison(v, weight, plan.weight(v).times(carcass), v > 0 && plan.isStated(v));
    }

    private PartComparison together(int cut, Set<Integer> parts, Estimate sum) {
        Estimate expected = plan.figure(v -> parts.contains(v) ? 1 : 0).times(carcass);
        return new PartComparison(cut, sum, expected, parts.stream().allMatch(plan::isStated));
    }

    private String names(List<Integer> parts) {
        List<Integer> named = parts.size() > MOST_NAMES + 1 ? parts.subList(0, MOST_NAMES) : parts;
        int more = parts.size() - named.size();
        return named.stream().map(v -> plan.node(v).name()).collect(Collectors.joining("; "))
                + (more > 0 ? "; and " + more + " more" : "");
    }
}
