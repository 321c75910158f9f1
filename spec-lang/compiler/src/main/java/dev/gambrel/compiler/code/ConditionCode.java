package dev.gambrel.compiler.code;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about what is said of when a cut is worked in a way. All are errors. */
public enum ConditionCode implements Code {
    /** A weight of something that is not weighed. */
    WEIGHT_OF_WHAT(
            "G1121", "weight-of-what", "A weight is asked of “{subject}”; only a piece and the carcass are weighed."),
    /** A class of something that is weighed. */
    NOT_A_WEIGHT("G1122", "not-a-weight", "“{value}” is no weight, and of “{subject}” only a weight can be asked."),
    /** A share of pieces that strays. */
    WAY_SHARE_STRAYS(
            "G1123",
            "way-share-strays",
            "The share of the pieces that are worked in one way is one figure of the cut itself, and {found} is not.");

    private final Kind kind;

    ConditionCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
