package dev.gambrel.batches.sheets;

import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.cuttingtest.Scale;
import java.util.List;

/**
 * What stands above the table of a weigh sheet.
 *
 * @param date as written; empty if not said
 * @param lot as written; empty if not said
 * @param cutter as written; empty if not said
 * @param scales those that were used, one or more
 * @param carcass its weight and basis
 * @param carcassScale on which it was weighed
 */
public record SheetHeading(
        String date, String lot, String cutter, List<Scale> scales, CarcassWeight carcass, Scale carcassScale) {
    /** Copies the list. */
    public SheetHeading {
        scales = List.copyOf(scales);
    }
}
