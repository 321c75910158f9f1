package dev.gambrel.cli.drift;

import dev.gambrel.batches.sheets.SheetHeading;
import dev.gambrel.batches.sheets.SheetOrder;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.drift.Baseline;
import dev.gambrel.yields.drift.LabelledTest;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Which sheets are charted: a mistake on a sheet is no change in the cutting.
 *
 * @param charted those that nothing speaks against, in the order of time
 * @param leftOut those that do not balance
 * @param isByDate whether the order is that of dates
 */
record ChartedSheets(List<SheetReport> charted, List<SheetReport> leftOut, boolean isByDate) {
    static ChartedSheets of(List<SheetReport> sheets) {
        Predicate<SheetReport> isFaulty = sheet -> sheet.faults().verdict() == Verdict.DOES_NOT_BALANCE;
        SheetOrder order =
                SheetOrder.of(sheets.stream().filter(isFaulty.negate()).toList());
        return new ChartedSheets(
                order.sheets(), sheets.stream().filter(isFaulty).toList(), order.isByDate());
    }

    List<LabelledTest> tests() {
        return charted.stream().map(ChartedSheets::test).toList();
    }

    private static LabelledTest test(SheetReport report) {
        SheetHeading heading = report.sheet().heading();
        String name = report.sheet().name();
        return new LabelledTest(
                heading.date().isEmpty() ? name : name + " (" + heading.date() + ")",
                heading.cutter(),
                heading.lot(),
                report.test());
    }

    /** What is charted, in what order, and what is not. */
    List<String> about(Baseline baseline) {
        int tests = charted.size();
        List<String> lines = new ArrayList<>();
        lines.add(tests + (tests == 1 ? " test" : " tests") + " in the order "
                + (isByDate ? "of their dates" : "in which they were given") + ", from "
                + Visible.text(test(charted.get(0)).name()) + " to "
                + Visible.text(test(charted.get(tests - 1)).name()) + ".");
        if (!isByDate && tests > 1) {
            lines.add("A sheet has no date such as 2026-03-02: see to it that the first test stands first.");
        }
        if (baseline instanceof Baseline.FirstTests first) {
            lines.add("What is usual is told by the first " + Math.min(first.tests(), tests) + ".");
        }
        if (!leftOut.isEmpty()) {
            lines.add("Left out, since they do not balance: "
                    + leftOut.stream()
                            .map(sheet -> Visible.text(sheet.sheet().name()))
                            .collect(Collectors.joining(", "))
                    + ". “gambrel balance” says why.");
        }
        return List.copyOf(lines);
    }
}
