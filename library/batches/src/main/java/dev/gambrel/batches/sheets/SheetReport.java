package dev.gambrel.batches.sheets;

import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.Faults;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.cuttingtest.WhereItWent;
import java.util.List;

/**
 * All that is said of one sheet.
 *
 * @param sheet the sheet
 * @param test its readings in balance
 * @param faults whether it adds up, and what may be wrong
 * @param weighed each part that was weighed beside what was expected
 * @param whereItWent meat, bone, trim and loss
 */
public record SheetReport(
        WeighSheet sheet, CuttingTest test, Faults faults, List<PartComparison> weighed, WhereItWent whereItWent) {
    /** The chance of a false alarm on a sheet where nothing is wrong. */
    public static final double LEVEL = 0.05;

    /** Copies the list. */
    public SheetReport {
        weighed = List.copyOf(weighed);
    }

    /**
     * Works out a sheet.
     *
     * @param sheet the sheet
     * @return what is to be said of it
     */
    public static SheetReport of(WeighSheet sheet) {
        CuttingTest test = sheet.test();
        return new SheetReport(
                sheet, test, Faults.of(test, LEVEL), PartComparison.of(test, sheet.expected()), WhereItWent.of(test));
    }
}
