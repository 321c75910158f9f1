package dev.gambrel.diagnostic;

/** Which words of a declaration a finding is about. */
public enum Aspect {
    /** The declaration as a whole, shown at its name. */
    NAME,
    /** The expected share. */
    SHARE,
    /** A share written of something other than the cut above. */
    DERIVED_SHARE,
    /** How many to a carcass. */
    COUNT,
    /** Bone in, part boned or boneless. */
    BONE_STATE,
    /** What the cut is said to contain. */
    CONTENTS,
    /** Where it is cut: tool, landmark, rib numbers. */
    SEPARATION,
    /** The stream it goes to. */
    STREAM,
    /** A limit, such as fat cover or the range of a portion. */
    LIMIT,
    /** A reference number. */
    REFERENCE,
    /** The source of a figure. */
    SOURCE,
    /** How lean a stream is. */
    LEAN,
    /** The species and what is known of it. */
    SPECIES,
    /** The carcass weight band. */
    BAND,
    /** A step between two bases. */
    STEP,
    /** How thick a portion is meant to be. */
    THICKNESS,
    /** The thicknesses that are accepted. */
    THICKNESS_LIMIT,
    /** Which of weight and thickness rules. */
    PRECEDENCE,
    /** How many portions. */
    NUMBER,
    /** How many portions there must be at the least. */
    FEWEST,
    /** What saw or knife takes at each cut. */
    KERF,
    /** The length that is sliced. */
    LENGTH,
    /** The smallest piece that still counts as a portion. */
    SMALLEST,
    /** The first and the last slice. */
    END_PIECES,
    /** How a joint is tied or netted. */
    BINDING,
    /** How many are packed together. */
    PACK,
    /** What is weighed and is not meat. */
    TARE,
    /** How alike left and right must be. */
    MATCHING,
    /** How many ribs a cut has. */
    RIB_COUNT,
    /** Tissue that is scored or left. */
    TREATMENT,
    /** What comes off before a part. */
    TURN,
    /** When a cut is worked in a way: as a rule, a share of the pieces, a condition. */
    CHOICE,
    /** A grade of the carcass. */
    GRADE,
    /** A warning that is allowed; counted over the whole specification. */
    ALLOWANCE,
    /** Title and revision of the specification. */
    TITLE,
    /** What is on and off the carcass. */
    DRESSING,
    /** What it is called elsewhere. */
    OTHER_NAME,
    /** Free words. */
    NOTE,
    /** Something measured on the carcass. */
    MEASURE,
    /** An estimate by equation. */
    ESTIMATE,
    /** A term of supply: weight, lean, cold, age, pack, claim, label; the index counts them as written. */
    SUPPLY,
    /** A term of an estimate, whose name is the path; the index counts figures and names as written. */
    TERM
}
