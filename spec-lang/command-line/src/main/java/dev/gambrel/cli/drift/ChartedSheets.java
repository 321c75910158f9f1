package dev.gambrel.cli.drift;

import dev.gambrel.batches.sheets.SheetHeading;
import dev.gambrel.batches.sheets.SheetOrder;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.drift.LabelledTest;
import java.util.List;
import java.util.function.Predicate;

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
}
