package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** Why a clause is met, fails or is not settled, and what stands in the way of an answer. */
public enum ConformanceCode implements Code {
    /** It is met. */
    CLAUSE_MET("G2201", "clause-met", Severity.NOTE, "Asked: {asked}. The house lays down: {held}."),
    /** A limit on every point is one on the average. */
    AVERAGE_FOLLOWS(
            "G2202",
            "average-follows",
            Severity.NOTE,
            "Asked: {asked}. The house lays down {held} at any point, so the average is no more either."),
    /** A choice that the buyer makes. */
    CHOSEN_AT_ORDER(
            "G2203",
            "chosen-at-order",
            Severity.NOTE,
            "Asked: {asked}. The house leaves {held} to be chosen at order."),

    /** A limit that allows too much. */
    LIMIT_PASSED(
            "G2211",
            "limit-passed",
            Severity.ERROR,
            "Asked: {asked}. The house lays down {held}, which allows {amount} {way} {end}."),
    /** More pieces may be outside. */
    MORE_OUTSIDE(
            "G2212",
            "more-outside",
            Severity.ERROR,
            "Asked: {asked}. The house lays down {held}: more pieces may be outside than is accepted."),
    /** Another state. */
    OTHERWISE("G2213", "laid-down-otherwise", Severity.ERROR, "Asked: {asked}. The house lays down {held}."),
    /** The cut is made elsewhere. */
    PARTED_ELSEWHERE(
            "G2214",
            "parted-elsewhere",
            Severity.ERROR,
            "Asked: parted {asked}. The house parts it elsewhere at both ends: {held}."),

    /** Nothing at all. */
    NOTHING_SAID("G2221", "nothing-said", Severity.WARNING, "Asked: {asked}. The house lays down nothing about it."),
    /** A figure that is expected is no limit. */
    ONLY_EXPECTED(
            "G2222",
            "only-expected",
            Severity.WARNING,
            "Asked: {asked}. The house expects a weight and lays down no limit; what is expected is not a limit."),
    /** A limit at one end of two. */
    ONE_END_OPEN(
            "G2223",
            "one-end-open",
            Severity.WARNING,
            "Asked: {asked}. The house lays down {held}, and nothing {end}."),
    /** Figures that are found in different ways. */
    FOUND_OTHERWISE(
            "G2224",
            "found-otherwise",
            Severity.WARNING,
            "Asked: {asked}. The house lays down {held}; the one proves nothing of the other."),
    /** Thickest is not average. */
    POINT_PROVES_NO_AVERAGE(
            "G2225",
            "point-proves-no-average",
            Severity.WARNING,
            "Asked: {asked}. The house lays down {held}; a limit at any point proves no average below it, and an average no"
                    + " point."),
    /** The same thing in other words, or another thing. */
    OTHER_WORDS(
            "G2226",
            "other-words",
            Severity.WARNING,
            "Asked: {asked}. The house lays down {held}; whether that is the same the words do not tell."),
    /** A number of another edition. */
    OTHER_EDITION(
            "G2227",
            "number-of-other-edition",
            Severity.WARNING,
            "Asked: {asked}. The house quotes {held}; what a number stands for may differ from edition to edition."),
    /** Laid down of the whole, and not of each part. */
    OF_THE_WHOLE_ONLY(
            "G2228",
            "of-the-whole-only",
            Severity.WARNING,
            "Asked: {asked}. The house lays that down of what it is cut from, not of this cut."),
    /** There is nothing to hold it against. */
    NOTHING_TO_COMPARE(
            "G2229",
            "nothing-to-compare",
            Severity.WARNING,
            "Asked: {asked}. It is not known what of the house's that is."),

    /** The house has no such thing. */
    NO_SUCH_PRODUCT(
            "G2231",
            "no-such-product",
            Severity.WARNING,
            "The house's specification has nothing that answers to “{product}”."),
    /** The house has several. */
    SEVERAL_PRODUCTS(
            "G2232",
            "several-products",
            Severity.WARNING,
            "“{product}” may be any of these in the house's specification: {products}."),
    /** The animals differ. */
    OTHER_SPECIES(
            "G2233",
            "other-species",
            Severity.ERROR,
            "The requirement is for {asked}, and the specification is for {held}: nothing is compared."),
    /** Not a house's. */
    NOT_A_SPECIFICATION(
            "G2234",
            "not-a-specification",
            Severity.ERROR,
            "“{title}” is a buyer's requirement; what is held against one is a house's specification."),
    /** An unused answer. */
    MATCH_UNKNOWN("G2235", "match-unknown", Severity.ERROR, "There is no “{path}” in the {side}."),
    /** Nothing is asked. */
    NOTHING_ASKED(
            "G2236", "nothing-asked", Severity.WARNING, "The {side} lays down nothing that could be met or failed.");

    private final Kind kind;

    ConformanceCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
