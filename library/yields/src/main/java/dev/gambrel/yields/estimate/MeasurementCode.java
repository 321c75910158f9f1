package dev.gambrel.yields.estimate;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can be found when an estimate is worked out for one carcass. */
public enum MeasurementCode implements Code {
    /** Something that an equation needs was not given. */
    MISSING(
            "G1320",
            "measurement-missing",
            Severity.ERROR,
            "The estimate {estimate} needs {measure}, which was not given."),
    /** A reading that an equation was not made for. */
    OUTSIDE_RANGE(
            "G1321",
            "outside-valid-range",
            Severity.WARNING,
            "{measure} is {value}, outside the {low} to {high} that {what} holds for."),
    /** Something that nobody declared was given. */
    UNKNOWN("G1322", "unknown-measurement", Severity.ERROR, "Nothing called {measure} is measured here."),
    /** A reading of another kind. */
    WRONG_KIND("G1323", "wrong-kind-of-reading", Severity.ERROR, "{measure} is given as {value}; {wanted} is wanted."),
    /** A divisor that came out as nothing. */
    DIVIDED_BY_NOTHING(
            "G1324",
            "divided-by-nothing",
            Severity.ERROR,
            "The estimate {estimate} cannot be worked out: something in it is divided by 0."),
    /** A range that could not be looked at. */
    RANGE_NOT_CHECKED(
            "G1325",
            "range-not-checked",
            Severity.WARNING,
            "The estimate {estimate} holds for {measure} of {low} to {high}, and {measure} was not given."),
    /** Figures too long to be kept exactly. */
    TOO_LONG(
            "G1326",
            "estimate-too-large",
            Severity.ERROR,
            "The estimate {estimate} cannot be worked out: its figures grow past {digits} digits.");

    private final Kind kind;

    MeasurementCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
