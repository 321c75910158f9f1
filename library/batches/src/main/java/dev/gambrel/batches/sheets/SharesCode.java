package dev.gambrel.batches.sheets;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can be found about sheets that a house takes its own shares from. */
public enum SharesCode implements Code {
    /** A sheet that does not balance. */
    SHEET_LEFT_OUT("G2301", "sheet-left-out", "The sheet does not balance and is left out: {why}."),
    /** A sheet that was handed in twice. */
    SHEET_TWICE("G2302", "sheet-twice", "The sheet tells the same as {other} and counts once.");

    private final Kind kind;

    SharesCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.WARNING, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
