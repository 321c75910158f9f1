package dev.gambrel.cli.drift;

import dev.gambrel.batches.sheets.SheetOrder;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.SheetsTaken;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.yields.drift.Baseline;
import dev.gambrel.yields.drift.LabelledTest;
import java.util.ArrayList;
import java.util.List;

/**
 * Which sheets are charted: a mistake on a sheet is no change in the cutting, and one sheet handed in twice is no second test.
 *
 * @param order those that are charted
 * @param leftOut the names of the others
 */
record ChartedSheets(SheetOrder order, List<String> leftOut) {
    ChartedSheets {
        leftOut = List.copyOf(leftOut);
    }

    static ChartedSheets of(List<SheetReport> all, SheetsTaken taken) {
        List<SheetReport> others = new ArrayList<>(all);
        taken.reports().forEach(others::remove);
        return new ChartedSheets(
                SheetOrder.of(taken.reports()),
                others.stream().map(report -> report.sheet().name()).toList());
    }

    /** What is charted, in what order, and what is not. */
    List<String> about(Baseline baseline) {
        List<LabelledTest> tests = order.tests();
        List<String> lines = new ArrayList<>();
        lines.add(tests.size() + (tests.size() == 1 ? " test" : " tests") + " in the order "
                + (order.isByDate() ? "of their dates" : "in which they were given") + ", from "
                + Visible.text(tests.get(0).name()) + " to "
                + Visible.text(tests.get(tests.size() - 1).name()) + ".");
        if (!order.isByDate() && tests.size() > 1) {
            lines.add("A sheet has no date such as 2026-03-02: see to it that the first test stands first.");
        }
        if (baseline instanceof Baseline.FirstTests first) {
            lines.add("What is usual is told by the first " + Math.min(first.tests(), tests.size()) + ".");
        }
        if (!leftOut.isEmpty()) {
            lines.add("Left out: " + Visible.text(String.join(", ", leftOut)) + ".");
        }
        return List.copyOf(lines);
    }
}
