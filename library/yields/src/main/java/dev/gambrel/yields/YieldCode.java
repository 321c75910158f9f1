package dev.gambrel.yields;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.yields.plan.Kind;

/** What can be found about a carcass weight. */
public enum YieldCode implements Code {
    /** The weight is on a basis from which no stated loss leads to the specification's. */
    BASIS_DIFFERS(
            "G1001",
            "basis-differs",
            Severity.ERROR,
            "The weight given is {given}, but this specification is for {wanted} weight, and it does not say what is lost"
                    + " between the two."),
    /** The weight is one that the specification was not written for. */
    OUTSIDE_BAND(
            "G1002",
            "outside-band",
            Severity.WARNING,
            "The carcass weighs {weight}, outside the {low} to {high} that this specification is for.{question}"),
    /** No weight was given and none is stated. */
    NO_BAND(
            "G1003",
            "no-band",
            Severity.ERROR,
            "This specification states no weight band, so it does not say what a typical carcass weighs."),
    /** A carcass of nothing, or less. */
    CARCASS_WEIGHT_NOT_POSITIVE(
            "G1004",
            "carcass-weight-not-positive",
            Severity.ERROR,
            "The carcass is given as {weight}; a carcass weighs more than nothing."),
    /** A weight that no carcass has. */
    WEIGHT_OUT_OF_REACH(
            "G1005",
            "weight-out-of-reach",
            Severity.ERROR,
            "The carcass is given as {weight}; weights from {least} to {most} can be worked with."),
    /** How a carcass is worked depends on its weight, so that carcasses of different weights have nothing to average. */
    WORKED_APART(
            "G1006",
            "worked-apart",
            Severity.ERROR,
            "The carcasses weigh from {lightest} to {heaviest}, and this specification works a carcass by what it weighs: what"
                    + " they give is not told together."),
    /** Weights are asked of a text that has none. */
    REQUIREMENT_HAS_NO_YIELDS(
            "G1007",
            "requirement-has-no-yields",
            Severity.ERROR,
            "The text “{title}” is a buyer's requirement: it has no shares, so no weights follow from it.");

    private final Kind kind;

    YieldCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
