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
    /** Something measured on the carcass. */
    MEASURE,
    /** An estimate by equation. */
    ESTIMATE,
    /** A term of an estimate, whose name is the path; the index counts figures and names as written. */
    TERM
}
