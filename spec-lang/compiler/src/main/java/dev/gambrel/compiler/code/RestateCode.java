package dev.gambrel.compiler.code;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What stands against new shares for a specification. */
public enum RestateCode implements Code {
    /** A revision, whose lines say only what changes. */
    OF_REVISION(
            "G2311",
            "shares-of-revision",
            Severity.ERROR,
            "The specification revises another file: its figures are not edited."),
    /** A cut whose lines cannot take other figures. */
    CUT_NOT_RESTATED(
            "G2312", "cut-not-restated", Severity.WARNING, "The shares of {cut} are not written anew: {part} {why}."),
    /** Edits that would break the specification. */
    WITH_ERRORS(
            "G2313",
            "restated-with-errors",
            Severity.ERROR,
            "With the new shares the specification would be wrong: {why}");

    private final Kind kind;

    RestateCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
