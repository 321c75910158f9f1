package dev.gambrel.compiler.code;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about what readable lines say. All are errors. */
public enum MeaningCode implements Code {
    /** A line in the wrong place. */
    MISPLACED_LINE("G0211", "misplaced-line", "The {line} line does not belong {where}."),
    /** Something that such a line does not say. */
    MISPLACED_CLAUSE("G0212", "misplaced-clause", "“{clause}” does not belong in this {line} line."),
    /** Something said twice in one line. */
    SAID_TWICE("G0213", "said-twice", "This {line} line says twice {what}."),
    /** Something that a line must say. */
    MISSING_CLAUSE("G0217", "missing-clause", "This {line} line does not say {what}."),
    /** No version of the language. */
    NO_LANGUAGE("G0218", "no-language", "The first line does not say which version of the language this is."),
    /** A version that this program does not know. */
    UNKNOWN_LANGUAGE("G0219", "unknown-language", "This program does not know version {version} of the language."),
    /** A clause that the lack of a comma made part of a name. */
    MISSING_COMMA("G0220", "missing-comma", "There is no comma between “{name}” and “{clause}”."),

    /** Nothing declares a specification. */
    NO_SPECIFICATION("G0310", "no-specification", "No line declares the specification."),
    /** Nothing declares the carcass. */
    NO_CARCASS("G0311", "no-carcass", "No line says what carcass the shares are of."),
    /** Nothing is cut. */
    NO_CUTS("G0312", "no-cuts", "Nothing is cut from the carcass."),
    /** Two of what there is one of. */
    DECLARED_TWICE("G0313", "declared-twice", "There is a second {line} line."),
    /** A species that nobody declared. */
    UNKNOWN_SPECIES("G0314", "unknown-species", "Nothing is known of the species {species}."),
    /** No such basis. */
    UNKNOWN_BASIS("G0315", "unknown-basis", "“{basis}” is not a basis of weight."),
    /** No such tool. */
    UNKNOWN_TOOL("G0316", "unknown-tool", "“{tool}” is not a tool that the language knows."),
    /** No such region of the spine. */
    UNKNOWN_REGION("G0317", "unknown-region", "“{region}” is not a region of the spine."),
    /** A step that goes back. */
    BACKWARD_STEP("G0318", "backward-step", "A carcass does not go from {from} to {to}."),

    /** A number without a unit. */
    MISSING_UNIT("G0401", "missing-unit", "The figure {number} has no unit; {dimension} is wanted here."),
    /** No such unit. */
    UNKNOWN_UNIT("G0402", "unknown-unit", "“{unit}” is not a unit that the language knows."),
    /** A unit that measures something else. */
    WRONG_DIMENSION("G0403", "wrong-dimension", "{found} is {dimension}; {wanted} is wanted here."),
    /** Two units that are not written together. */
    MIXED_UNITS("G0404", "mixed-units", "The units {first} and {second} are not written together."),
    /** Not a whole number. */
    NOT_A_COUNT("G0408", "not-a-count", "{number} is not a whole number from {least} to {most}."),
    /** Portions counted from something else than a piece, a side or a carcass. */
    UNKNOWN_WHOLE("G1416", "unknown-whole", "“{whole}” is nothing that portions are counted from."),
    /** A word that does not limit a distance. */
    NOT_A_LIMIT("G1417", "not-a-limit", "“at {word}” is no limit on a distance."),
    /** A spread where limits are wanted. */
    NOT_A_BAND("G0410", "not-a-band", "A band is written as a lightest and a heaviest weight."),
    /** No such day. */
    NOT_A_DATE("G0412", "not-a-date", "{found} is not a date."),
    /** Not so many out of so many. */
    NOT_SO_MANY_OUTSIDE("G2111", "not-so-many-outside", "{found} is not so many out of so many."),
    /** Not a number of days. */
    NOT_DAYS("G0413", "not-days", "{found} is not a number of whole days from 1 to {most}.");

    private final Kind kind;

    MeaningCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
