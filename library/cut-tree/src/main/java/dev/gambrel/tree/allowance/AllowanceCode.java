package dev.gambrel.tree.allowance;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about warnings that are allowed. None of them can be allowed in its turn. */
public enum AllowanceCode implements Code {
    /** No warning of that name. */
    UNKNOWN_WARNING(
            "G1501", "unknown-warning", Severity.ERROR, "No warning that can be allowed is called “{finding}”."),
    /** Something graver than a warning. */
    NOT_ALLOWABLE("G1502", "not-allowable", Severity.ERROR, "{finding} cannot be allowed, since it is {what}."),
    /** Accepted without saying why. */
    NO_REASON("G1503", "no-reason", Severity.ERROR, "Nothing says why {finding} is allowed."),
    /** Nothing to accept. */
    UNUSED_ALLOWANCE(
            "G1504",
            "unused-allowance",
            Severity.WARNING,
            "{finding} is allowed for the {part}, but nothing of the kind is found there."),
    /** Accepted twice. */
    ALLOWED_TWICE("G1505", "allowed-twice", Severity.ERROR, "{finding} is allowed twice for the {part}.");

    private final Kind kind;

    AllowanceCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
