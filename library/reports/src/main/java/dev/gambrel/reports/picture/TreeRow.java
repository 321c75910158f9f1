package dev.gambrel.reports.picture;

import dev.gambrel.yields.cuttingtest.PartComparison;

/** A line of the drawn tree. */
sealed interface TreeRow {
    /** How deep it stands, 0 for the carcass. */
    int level();

    /** What it is called among its sisters. */
    String name();

    /** How a weight came to be known. */
    enum How {
        WEIGHED("weighed"),
        WORKED_OUT("worked out"),
        /** A loss that nothing checks. */
        ASSUMED("taken as expected");

        private final String words;

        How(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** A weight that is known, of one part or of several together. */
    record Known(int level, String name, boolean isOne, PartComparison part, How how) implements TreeRow {}

    /** Of this there is nothing to compare. */
    record Unknown(int level, String name, String why) implements TreeRow {}
}
