package dev.gambrel.cli.shares.report;

import dev.gambrel.batches.sheets.SheetsTaken;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.testedcuts.FoundShares;
import dev.gambrel.yields.testedcuts.Mean;
import dev.gambrel.yields.testedcuts.Prior;
import dev.gambrel.yields.testedcuts.TestedCut;
import dev.gambrel.yields.testedcuts.TestedCuts;
import java.util.List;

/**
 * All that the sheets of a house say of its shares.
 *
 * @param sheets those that count
 * @param mean what the shares are means of
 * @param prior whether what is stated counts
 * @param found the cuts of which the sheets tell every part
 * @param notFound the others
 */
public record SharesReport(
        List<WeighSheet> sheets, Mean mean, Prior prior, List<FoundShares> found, List<TestedCut.NotFound> notFound) {
    /** Copies the lists. */
    public SharesReport {
        sheets = List.copyOf(sheets);
        found = List.copyOf(found);
        notFound = List.copyOf(notFound);
    }

    /**
     * Works out the shares of every cut.
     *
     * @param tree the specification
     * @param taken its sheets
     * @param mean what the shares shall be means of
     * @param prior whether what is stated counts; it does not in a cut where no share is stated of some part
     * @return the report
     */
    public static SharesReport of(CutTree tree, SheetsTaken taken, Mean mean, Prior prior) {
        List<TestedCut> cuts = TestedCuts.of(tree, taken.tests()).cuts();
        return new SharesReport(
                taken.sheets(),
                mean,
                prior,
                cuts.stream()
                        .filter(cut -> cut instanceof TestedCut.Found)
                        .map(TestedCut.Found.class::cast)
                        .map(cut ->
                                FoundShares.of(cut, mean, FoundShares.canDrawTowards(cut) ? prior : new Prior.None()))
                        .toList(),
                cuts.stream()
                        .filter(cut -> cut instanceof TestedCut.NotFound)
                        .map(TestedCut.NotFound.class::cast)
                        .toList());
    }
}
