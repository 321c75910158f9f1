package dev.gambrel.yields.conformance.number;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What is found about a reference number and the words beside it. */
public enum NumberCode implements Code {
    /** The two cannot both hold, and nobody has said which does. */
    NUMBER_AGAINST_WORDS(
            "G2241",
            "number-against-words",
            Severity.WARNING,
            "{number} means {published}, and the words beside it say {words}."),
    /** The words hold. */
    NUMBER_GIVES_WAY(
            "G2242",
            "number-gives-way",
            Severity.NOTE,
            "{number} means {published}; the words beside it say {words}, and it is said that the words rule."),
    /** What the number means is only remembered. */
    NUMBER_PERHAPS_AGAINST_WORDS(
            "G2246",
            "number-perhaps-against-words",
            Severity.NOTE,
            "{number}, as it is remembered, means {published}, and the words beside it say {words}: look it up."),
    /** The house's own text. */
    HOUSE_NUMBER_AGAINST_WORDS(
            "G2243",
            "house-number-against-words",
            Severity.WARNING,
            "In the house's text {number} means {published}, and the words beside it say {words}."),
    /** A code that cannot be read. */
    NO_MEAT_CODE("G2244", "no-meat-code", Severity.WARNING, "{number} is no meat code of UNECE: {why}"),
    /** A range that is not held. */
    RANGE_NOT_HELD(
            "G2245",
            "range-not-held",
            Severity.WARNING,
            "What range {range} of {number} is, is not held here, so pieces are not held against it.");

    private final Kind kind;

    NumberCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
