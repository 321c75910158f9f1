package dev.gambrel.batches.sheets;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can be found about sheets that a house takes its own shares from. */
public enum SharesCode implements Code {
    /** A sheet that does not balance. */
    SHEET_LEFT_OUT("G2301", "sheet-left-out", "The sheet does not balance and is left out: {why}."),
    /** A sheet that was handed in twice. */
    SHEET_TWICE("G2302", "sheet-twice", "The sheet tells the same as {other} and counts once."),
    /** Sheets that tell no shares. */
    NO_CUT_TESTED("G2303", "no-cut-tested", Severity.ERROR, "Of no cut do the sheets tell the weight of every part."),
    /** Figures that rest on the tests already. */
    COUNTED_TWICE(
            "G2304",
            "tests-count-twice",
            "What is stated of {cut} rests on these tests already: as a prior it would count them twice."),
    /** A sheet that nothing holds against anything. */
    NOT_CHECKED(
            "G2305",
            "sheet-not-checked",
            "Nothing on the sheet checks its weights: right or wrong, they are taken as they are.");

    private final Kind kind;

    SharesCode(String id, String slug, String pattern) {
        this(id, slug, Severity.WARNING, pattern);
    }

    SharesCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
