package dev.gambrel.reports.picture;

import dev.gambrel.yields.cuttingtest.PartComparison;

/** A line of the drawn tree. */
sealed interface TreeRow {
    /** How deep it stands, 0 for the carcass. */
    int level();

    /** What it is called among its sisters. */
    String name();

    /** A part whose weight is known. */
    record Known(int level, String name, PartComparison part, boolean isWeighed) implements TreeRow {}

    /** Parts of one cut of which only the sum is known. */
    record Together(int level, String name, PartComparison sum) implements TreeRow {}

    /** A part that is drawn for what is known below it. */
    record Unknown(int level, String name) implements TreeRow {}
}
