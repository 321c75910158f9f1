package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about portions and the words of the bench. */
public enum BenchCode implements Code {
    /** Two figures that may not both be kept, and nobody has said which is. */
    PRECEDENCE_NOT_STATED(
            "G1401",
            "precedence-not-stated",
            "Both the weight and the thickness of the {portion} are written, and nothing says which rules."),
    /** One figure rules, and there is no other. */
    PRECEDENCE_OF_ONE(
            "G1402", "precedence-of-one", "The {rules} of the {portion} is said to rule, but no {other} is written."),
    /** Cuts are lost, but how many there are is not known. */
    KERF_WITHOUT_THICKNESS(
            "G1403",
            "kerf-without-thickness",
            "A kerf is written for the {portion}, but not how thick a slice is to be, so what the cuts take cannot be worked out."),
    /** No slice fits. */
    SLICE_LONGER_THAN_PIECE(
            "G1404",
            "slice-longer-than-piece",
            "One {portion} of {thickness} is thicker than the length that is sliced, {length}."),
    /** Fewer than one. */
    COUNT_NOT_POSITIVE("G1405", "count-not-positive", "There must be 1 or more {what}; this line says {number}."),
    /** A figure below zero. */
    BELOW_NOTHING("G1406", "below-nothing", "The {what} of {figure} is less than nothing."),
    /** A figure of zero or below. */
    MEASURE_NOT_POSITIVE("G1407", "measure-not-positive", "The {what} must be more than 0; here it is {figure}."),
    /** The smallest is not smaller. */
    SMALLEST_NOT_SMALLER(
            "G1408",
            "smallest-not-smaller",
            "The smallest piece that still counts, {smallest}, is no smaller than the target of {target}."),
    /** A target beyond its only limit. */
    TARGET_PAST_LIMIT("G1409", "target-past-limit", "The target of {target} is {way} its own limit of {limit}."),
    /** A pair of one. */
    PAIR_OF_ONE("G1410", "pair-of-one", "The {cut} is one piece to a carcass, so there is no pair to match."),
    /** It waits for something that is not there. */
    UNKNOWN_TURN("G1411", "unknown-turn", "The {part} comes after {after}, but no part of the {cut} is called so."),
    /** Each waits for the other. */
    TURNS_GO_ROUND("G1412", "turns-go-round", "No order of work is left for the {cut}: {parts} wait for one another."),
    /** Taken off and not taken off. */
    TREATED_AND_REMOVED(
            "G1413", "treated-and-removed", "The {tissue} of the {cut} is to be {treatment} and removed as well."),
    /** Two counts of ribs. */
    RIBS_DIFFER("G1414", "ribs-differ", "The {cut} is to have {asked} ribs, but ribs {first} to {last} are {count}."),
    /** Two distances, and no telling which is where. */
    ENDS_NOT_TOLD_APART(
            "G1415",
            "ends-not-told-apart",
            "Of the {number} distances written here, not each is for an end of its own."),
    /** Too light for even one. */
    NO_PORTION_FROM_PIECE(
            "G1418",
            "no-portion-from-piece",
            Severity.WARNING,
            "No {cut} gives a {portion} of {target}: even of a carcass of {carcass} one piece, trimmed, weighs {piece}."),
    /** Weight and thickness ask for another muscle. */
    MUSCLE_DOES_NOT_FIT(
            "G1419",
            "muscle-does-not-fit",
            Severity.WARNING,
            "The {portion} keeps its weight and its thickness in a muscle of {needed} cm² across, but the {cut} has {small} to"
                    + " {large} cm².");

    private final Kind kind;

    BenchCode(String id, String slug, String pattern) {
        this(id, slug, Severity.ERROR, pattern);
    }

    BenchCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
