package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can be found about what a run asks for. All are errors. */
public enum WorkingCode implements Code {
    /** An order for a cut that is not worked in ways. */
    NO_SUCH_CUT("G1131", "no-such-cut", "No cut called {cut} is worked in ways."),
    /** A name that several cuts have. */
    WHICH_CUT("G1132", "which-cut", "More than one cut called {cut} is worked in ways."),
    /** A way that a cut does not have. */
    NO_SUCH_WAY("G1133", "no-such-way", "The {cut} is not worked as {way}."),
    /** Shares that are not all of the pieces. */
    MIX_NOT_100("G1134", "mix-not-100", "Of the {cut} {shares} are asked for, which is not all of it."),
    /** Two orders for one cut, or two values of one grade. */
    ASKED_TWICE("G1135", "asked-twice", "It is said twice what becomes of the {of}."),
    /** A grade that decides, and that nobody told. */
    GRADE_NOT_GIVEN(
            "G1136",
            "grade-not-given",
            "How the {cut} is worked depends on the {grade}, and the {grade} is not given."),
    /** A grade that the specification does not declare. */
    NO_SUCH_GRADE("G1137", "no-such-grade", "The specification has no grade called {grade}."),
    /** A value that a grade does not have. */
    NO_SUCH_VALUE("G1138", "no-such-value", "The {grade} cannot be {value}.");

    private final Kind kind;

    WorkingCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
