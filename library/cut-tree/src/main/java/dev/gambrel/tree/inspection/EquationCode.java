package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about estimates by equation. All are errors. */
public enum EquationCode implements Code {
    /** A name in an equation that stands for nothing. */
    UNKNOWN_TERM(
            "G1301",
            "unknown-term",
            "“{name}” in the estimate {estimate} is neither a measure nor an estimate nor a carcass weight."),
    /** A name that stands for something already. */
    NAME_TAKEN("G1302", "name-taken", "The name {name} is taken: {by}."),
    /** Figures that do not measure the same. */
    DOES_NOT_ADD(
            "G1303",
            "does-not-add",
            "In the estimate {estimate}, {term} is {found}; {wanted} is wanted, so the two do not add up."),
    /** A result that is not what it is said to be. */
    COMES_OUT_OTHERWISE(
            "G1304", "comes-out-otherwise", "The estimate {estimate} comes out as {found}; {wanted} is wanted."),
    /** An estimate used as a share that is none. */
    NOT_A_SHARE(
            "G1305",
            "not-a-share",
            "The share of the {part} is estimated by {estimate}, which comes out as {found} and not as a share."),
    /** An equation that needs its own result. */
    GOES_ROUND("G1306", "goes-round", "The estimate {estimate} is worked out from itself."),
    /** A divisor that may be nothing. */
    MAY_DIVIDE_BY_NOTHING(
            "G1307",
            "may-divide-by-nothing",
            "The estimate {estimate} divides by what may be 0: it runs from {low} to {high}."),
    /** An estimated share where no rest gives way. */
    NOTHING_GIVES_WAY(
            "G1308",
            "estimate-without-rest",
            "The share of the {part} is estimated, but no part of the {cut} takes what is left."),
    /** An estimate that nobody declared. */
    UNKNOWN_ESTIMATE("G1309", "unknown-estimate", "There is no estimate called {estimate}."),
    /** A word that is not on a scale. */
    UNKNOWN_SCORE("G1310", "unknown-score", "“{word}” is not a score of {measure}."),
    /** A temperature in an equation. */
    TEMPERATURE("G1311", "temperature-in-estimate", "An estimate cannot be worked out with a temperature."),
    /** More terms than are taken. */
    ESTIMATE_TOO_LONG(
            "G1312",
            "estimate-too-long",
            "The estimate {estimate} has {found} terms, {depth} brackets deep; at most {allowed} terms and {deep} deep are"
                    + " taken."),
    /** A range that does not measure what the measure does. */
    RANGE_OTHERWISE("G1313", "range-otherwise", "{measure} is {wanted}, but its range is {low} to {high}.");

    private final Kind kind;

    EquationCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
