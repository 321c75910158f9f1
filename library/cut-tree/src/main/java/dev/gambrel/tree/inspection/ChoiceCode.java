package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about the ways in which a cut is worked. All are errors. */
public enum ChoiceCode implements Code {
    /** A part, a portion or an arrow beside ways. */
    BESIDE_WAYS(
            "G1101",
            "beside-ways",
            "The {cut} is worked in ways, and {what} stands beside them, so it belongs to none of them."),
    /** Nothing says what is done if nobody asks. */
    NO_RULE("G1102", "no-rule", "Nothing says how the {cut} is worked as a rule."),
    /** Two ways, each of them the rule. */
    TWO_RULES("G1103", "two-rules", "Two ways of the {cut} are the rule: {first} and {second}."),
    /** Shares of the pieces that are not all of them. */
    WAY_SHARES_NOT_100(
            "G1104",
            "way-shares-not-100",
            "The shares of the pieces that go each way of the {cut} add up to {sum}, and not to all of them."),
    /** Standing shares together with a rule or a condition. */
    SHARES_AND_CONDITIONS(
            "G1105",
            "shares-and-conditions",
            "Of the {cut} some ways have a share of the pieces, so the way {way} cannot be {what}."),
    /** Two ways at once. */
    CONDITIONS_OVERLAP(
            "G1106",
            "conditions-overlap",
            "When {subject} is {overlap}, the {cut} is worked in two ways at once: {first} and {second}."),
    /** No way at all. */
    CONDITIONS_LEAVE_GAP(
            "G1107", "conditions-leave-gap", "Nothing says how the {cut} is worked when {subject} is {gap}."),
    /** What can never be so. */
    IMPOSSIBLE_CONDITION("G1108", "impossible-condition", "It is never so that {condition}."),
    /** A grade that nobody declared. */
    UNKNOWN_GRADE("G1109", "unknown-grade", "There is no grade called {grade}."),
    /** A value that a grade does not have. */
    UNKNOWN_GRADE_VALUE("G1110", "unknown-grade-value", "The grade {grade} has no {value}."),
    /** Conditions of one cut about different things. */
    CONDITIONS_DIFFER(
            "G1111",
            "conditions-differ",
            "Of the ways of the {cut} one asks about {first} and another about {second}, and both may be so."),
    /** Two grades of one name. */
    DUPLICATE_GRADE("G1112", "duplicate-grade", "The grade {grade} is declared twice."),
    /** A value listed twice. */
    DUPLICATE_GRADE_VALUE("G1113", "duplicate-grade-value", "The grade {grade} lists {value} twice.");

    private final Kind kind;

    ChoiceCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
