package dev.gambrel.cli.balance.report;

import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.cuttingtest.WhereItWent;
import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.error.Suspects;
import dev.gambrel.yields.reconciliation.pattern.Explanation;
import java.util.List;

/**
 * All that is said of one sheet.
 *
 * @param sheet the sheet
 * @param test its readings in balance
 * @param verdict whether it adds up
 * @param weighed each part that was weighed beside what was expected
 * @param suspects what may be wrong
 * @param explanations mistakes with a pattern that the sheet speaks for
 * @param whereItWent meat, bone, trim and loss
 */
public record SheetReport(
        WeighSheet sheet,
        CuttingTest test,
        Verdict verdict,
        List<PartComparison> weighed,
        Suspects suspects,
        List<Explanation> explanations,
        WhereItWent whereItWent) {
    /** The chance of a false alarm on a sheet where nothing is wrong. */
    public static final double LEVEL = 0.05;

    /** Copies the lists. */
    public SheetReport {
        weighed = List.copyOf(weighed);
        explanations = List.copyOf(explanations);
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
                sheet,
                test,
                Verdict.of(test, LEVEL),
                PartComparison.of(test, sheet.expected()),
                test.suspects(LEVEL),
                test.explanations(LEVEL),
                WhereItWent.of(test));
    }

    /**
     * Cuts that gave more than they weighed, even if nothing was lost.
     *
     * @return in the order of the plan
     */
    public List<CutBalance> moreOutThanIn() {
        return test.moreOutThanIn(LEVEL);
    }
}
