package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about terms of supply and about requirements. */
public enum TermCode implements Code {
    /** A figure for the yield maths where nothing is worked out. */
    EXPECTED_IN_REQUIREMENT(
            "G2101",
            "expected-in-requirement",
            Severity.WARNING,
            "The {part} has {what}, which a requirement does not ask for: it is not held against anybody."),
    /** Two terms on one thing. */
    TERM_TWICE("G2102", "term-twice", Severity.ERROR, "Of the {cut} the {what} is laid down twice."),
    /** A figure that nothing can keep. */
    TERM_IMPOSSIBLE(
            "G2103", "term-impossible", Severity.ERROR, "The {what} of the {cut} cannot be {figure}: {allowed}."),
    /** A house cuts to a size. */
    PORTION_WITHOUT_SIZE(
            "G2105", "portion-without-size", Severity.ERROR, "How large the {portion} is meant to be is not said.");

    private final Kind kind;

    TermCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
