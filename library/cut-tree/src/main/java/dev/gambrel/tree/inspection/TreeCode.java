package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about a cut tree, however it was made. */
public enum TreeCode implements Code {
    /** More parts than are taken. */
    TOO_MANY_PARTS(
            "G0111", "too-many-parts", Severity.ERROR, "The tree has {found} parts; at most {allowed} are taken."),
    /** Cuts within cuts beyond what is taken. */
    TOO_DEEP(
            "G0112",
            "cuts-too-deep",
            Severity.ERROR,
            "The {part} lies {found} cuts deep; at most {allowed} are taken."),
    /** More is told of a species than is taken. */
    TOO_MANY_STRUCTURES(
            "G0150",
            "too-many-structures",
            Severity.ERROR,
            "The {species} has {found} pieces, bones, muscles, glands and published figures; at most {allowed} are taken."),

    /** Two parts of one cut have the same name. */
    DUPLICATE_PART("G0301", "duplicate-part", Severity.ERROR, "There are two lines for the {part} under the {above}."),
    /** A stream that nobody declared. */
    UNKNOWN_STREAM("G0302", "unknown-stream", Severity.ERROR, "There is no stream called {stream}."),
    /** Two streams of one name. */
    DUPLICATE_STREAM("G0303", "duplicate-stream", Severity.ERROR, "The stream {stream} is declared twice."),
    /** A source that nobody declared. */
    UNKNOWN_SOURCE("G0304", "unknown-source", Severity.ERROR, "There is no source called {source}."),
    /** Two sources of one name. */
    DUPLICATE_SOURCE("G0305", "duplicate-source", Severity.ERROR, "The source {source} is declared twice."),
    /** A share of something that is not above. */
    UNKNOWN_BASE(
            "G0306",
            "unknown-base",
            Severity.ERROR,
            "A share of the {part} is written of {base}, which is neither the carcass nor a cut above it."),
    /** A name that means two pieces. */
    AMBIGUOUS_NAME(
            "G0307",
            "ambiguous-name",
            Severity.WARNING,
            "“{name}” means one piece in one region and another elsewhere."),

    /** Two cuts that are one piece of the animal. */
    SAME_PIECE_TWICE(
            "G0308",
            "same-piece-twice",
            Severity.WARNING,
            "Two cuts here are the same piece, the {piece}: {other} and {cut}."),
    /** A name that is nearly that of a piece. */
    NEARLY_A_PIECE(
            "G0309",
            "nearly-a-piece",
            Severity.WARNING,
            "The {species} has no piece called {cut}, so neither its bones nor its share were checked."),
    /** Two steps from one basis. */
    STEP_TWICE("G0319", "step-twice", Severity.ERROR, "What is lost from {from} weight on is written twice."),
    /** Low end above high end. */
    REVERSED_RANGE("G0405", "reversed-range", Severity.ERROR, "The range {low} to {high} runs from high to low."),
    /** A standard deviation below zero. */
    NEGATIVE_SPREAD("G0406", "negative-spread", Severity.ERROR, "A spread of {spread} is less than nothing."),
    /** A weight of nothing or less. */
    WEIGHT_NOT_POSITIVE(
            "G0407", "weight-not-positive", Severity.ERROR, "A weight must be more than 0; this one is {weight}."),

    /** A standard deviation larger than what it is a share of. */
    SPREAD_TOO_LARGE(
            "G0411",
            "spread-too-large",
            Severity.ERROR,
            "A share of {share} cannot have a spread of {spread}: it would be less than nothing or more than all."),
    /** Shares that do not add up. */
    SUM_NOT_100(
            "G0501",
            "sum-not-100",
            Severity.ERROR,
            "The parts of the {cut} add up to {sum}, which is {gap} too {way}."),
    /** More than one rest. */
    TWO_RESTS("G0502", "two-rests", Severity.ERROR, "The {cut} has two rests; only one part can take what is left."),
    /** Nothing left for the rest. */
    NEGATIVE_REST(
            "G0503",
            "negative-rest",
            Severity.ERROR,
            "The named parts of the {cut} already add up to {sum}, so less than nothing is left."),
    /** One spread larger than all others together. */
    IMPOSSIBLE_SPREAD(
            "G0504",
            "impossible-spread",
            Severity.ERROR,
            "The spread of the {part} is {spread}, more than those of all other parts of the {cut} together, {others}."),
    /** Only one spread among shares that close. */
    LONE_SPREAD(
            "G0505",
            "lone-spread",
            Severity.WARNING,
            "Only for the {part} is a spread written; where the parts of the {cut} must make 100 %, one cannot vary alone."),
    /** Two statements of one share that differ. */
    SHARE_CONTRADICTION(
            "G0506",
            "share-contradiction",
            Severity.ERROR,
            "The share of the {part} is written as {written} of {base}, but the shares on the way make it {product}."),
    /** A part without a figure. */
    SHARE_MISSING("G0507", "share-missing", Severity.ERROR, "No share of the {above} is written for the {part}."),
    /** Less than nothing or more than all. */
    SHARE_OUT_OF_RANGE(
            "G0508", "share-out-of-range", Severity.ERROR, "A share of {share} is not between 0 % and 100 %."),
    /** Cut up and sent away whole. */
    DIVIDED_AND_SENT(
            "G0509",
            "divided-and-sent",
            Severity.ERROR,
            "The {cut} is cut up below, so it cannot go whole to {stream} as well."),

    /** Boneless, with a bone left. */
    BONE_LEFT_IN(
            "G0601",
            "bone-left-in",
            Severity.ERROR,
            "The {cut} is called boneless, but {bones} went in and never came out."),
    /** A bone taken out of a cut that it is not in. */
    BONE_NEVER_ENTERED("G0602", "bone-never-entered", Severity.ERROR, "The {cut} has no {bone} in it to take out."),
    /** Not a bone of this animal. */
    UNKNOWN_BONE("G0603", "unknown-bone", Severity.ERROR, "The {species} has no bone called {bone}."),
    /** A rib that the animal does not have. */
    NO_SUCH_RIB(
            "G0604", "no-such-rib", Severity.ERROR, "There is no rib {rib}: the {species} has {count} pairs of ribs."),
    /** A vertebra that the animal does not have. */
    NO_SUCH_VERTEBRA(
            "G0605",
            "no-such-vertebra",
            Severity.ERROR,
            "There is no {region} vertebra {number}: the {species} has {count} of them."),
    /** A gland that lies in another part. */
    GLAND_ELSEWHERE(
            "G0606", "gland-elsewhere", Severity.ERROR, "The {gland} gland lies in the {where}, not in the {cut}."),
    /** Not a gland of this animal. */
    UNKNOWN_GLAND("G0607", "unknown-gland", Severity.ERROR, "The {species} has no gland called {gland}."),
    /** A bone that no part takes. */
    BONE_UNACCOUNTED(
            "G0608", "bone-unaccounted", Severity.WARNING, "No part of the {cut} takes the {bone} that went into it."),
    /** A pair cut as one, or one as a pair. */
    PIECE_COUNT_DIFFERS(
            "G0609",
            "piece-count-differs",
            Severity.WARNING,
            "The {cut} is written as {written}, but a {species} carcass has {known}."),
    /** Neither bone nor muscle of this animal. */
    UNKNOWN_CONTENTS("G0610", "unknown-contents", Severity.ERROR, "The {species} has no bone or muscle called {name}."),
    /** A pair that is not called one. */
    PAIR_UNSAID(
            "G0611",
            "pair-unsaid",
            Severity.WARNING,
            "A {species} carcass has two of the {cut}; nothing here says so, so all of it counts as one piece."),
    /** Nobody said where it goes. */
    NO_HOME("G0701", "no-home", Severity.ERROR, "Nothing says where the {part} of the {cut} goes."),
    /** Nobody said where the remainder goes. */
    REMAINDER_NO_HOME(
            "G0702",
            "remainder-no-home",
            Severity.ERROR,
            "After the last {portion}, what is left of the {cut} has nowhere to go."),
    /** A target that its own range refuses. */
    TARGET_OUTSIDE_RANGE(
            "G0703",
            "target-outside-range",
            Severity.ERROR,
            "The target of {target} lies outside its own range, {low} to {high}."),
    /** Portions of something that is cut up. */
    PORTION_OF_DIVIDED(
            "G0704",
            "portion-of-divided",
            Severity.ERROR,
            "The {cut} is cut up below, so no {portion} can be cut from it."),
    /** Bone with lean meat. */
    BONE_IN_LEAN(
            "G0706",
            "bone-in-lean",
            Severity.WARNING,
            "Bone goes into {stream}, which is said to be {lean} lean: {bones}."),
    /** Lean by eye put with lean by analysis. */
    SOURCE_JUDGED_APART(
            "G1909",
            "source-judged-apart",
            Severity.ERROR,
            "What goes to {stream} from {part} has a lean that is {judged}, and that of {other} is {otherwise}; lean by eye"
                    + " and lean by analysis are not the same figure."),
    /** Meat of another cut in a stream that takes only some. */
    NOT_FROM_THERE(
            "G0707",
            "not-from-there",
            Severity.ERROR,
            "The stream {stream} is said to come only from {cuts}, but {part} goes there."),
    /** A stream that comes from a cut that is not made. */
    CUT_NOT_MADE(
            "G0708",
            "cut-not-made",
            Severity.ERROR,
            "The stream {stream} is to come from {cut}, and no such cut is made."),

    /** Outside what print says. */
    OUTSIDE_PUBLISHED(
            "G0801",
            "outside-published",
            Severity.WARNING,
            "The {cut} is {share} of {base}; published figures run from {low} to {high}.");

    private final Kind kind;

    TreeCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
