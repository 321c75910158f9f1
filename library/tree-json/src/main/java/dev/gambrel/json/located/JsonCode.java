package dev.gambrel.json.located;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/**
 * What can be wrong with a file of JSON, before it is asked what its values mean.
 *
 * <p>Each finding names its place as a JSON pointer (RFC 6901) in the argument {@code at}; the outermost value, whose
 * pointer has no characters, is shown as "the top of the file".
 */
public enum JsonCode implements Code {
    /** The text stops being JSON. */
    NOT_JSON("G0901", "not-json", "From here on this file cannot be read as JSON."),
    /** The bytes are not UTF-8. */
    NOT_UTF8("G0902", "not-utf-8", "Byte {offset} of this file is not text in UTF-8."),
    /** The file is too long. */
    FILE_TOO_LONG("G0903", "file-too-long", "This file is {found} bytes long; at most {allowed} are read."),
    /** Too many brackets inside one another. */
    NESTED_TOO_DEEP(
            "G0904",
            "nested-too-deep",
            "Here more than {allowed} brackets stand inside one another; at most {allowed} are read."),
    /** Too many parts and pieces. */
    TOO_MANY_PARTS(
            "G0905", "json-too-many-parts", "This file has more than {allowed} parts; at most {allowed} are read."),
    /** Something in the file is longer than any file of ours needs. */
    PAST_LIMIT(
            "G0906",
            "past-limit",
            "Here a field's name, a number or the whole file is longer than is read: a field's name has at most "
                    + "{nameLength} characters, a number {digits} digits, a file {values} values."),
    /** More findings than are worth listing. */
    TOO_MANY_FINDINGS(
            "G0907",
            "too-many-findings",
            "More than {allowed} faults were found; the rest of this file is not listed."),
    /** Another kind of file. */
    WRONG_FORMAT("G0908", "wrong-format", "This file says that it is \"{found}\" at {at}; \"{allowed}\" is wanted."),
    /** A version that is not known. */
    UNKNOWN_VERSION(
            "G0909",
            "unknown-version",
            "This file is written in version {found}, as {at} says; only version {allowed} can be read."),
    /** One field twice. */
    DUPLICATE_FIELD(
            "G0910", "duplicate-field", "{at} is given twice; which of the two is meant cannot be told from the file."),
    /** A field that has no meaning there. */
    UNKNOWN_FIELD("G0911", "unknown-field", "Nothing called \"{found}\" is known at {at}."),
    /** A field that must be there. */
    MISSING_FIELD("G0912", "missing-field", "{at} is missing; it must say {allowed}."),
    /** A value of the wrong kind. */
    WRONG_TYPE("G0913", "wrong-type", "At {at} stands {found}; it must be {allowed}."),
    /** A word that is not one of the few that fit. */
    UNKNOWN_WORD("G0914", "unknown-word", "\"{found}\" is not one of the words that fit at {at}: {allowed}."),
    /** A unit that is not known. */
    UNKNOWN_UNIT(
            "G0915",
            "json-unknown-unit",
            "\"{found}\" at {at} is not a unit that is known; what fits there: {allowed}."),
    /** A unit that measures something else. */
    WRONG_DIMENSION(
            "G0916",
            "json-wrong-dimension",
            "{at} gives {found} in \"{unit}\", and {wanted} belongs there; what fits: {allowed}."),
    /** A name that cannot be one. */
    UNUSABLE_NAME(
            "G0917",
            "unusable-name",
            "{at} cannot be a name: a name has 1 to {allowed} characters that can be printed, and no slash; "
                    + "this one is \"{found}\"."),
    /** A number too long, too large or too small. */
    UNUSABLE_NUMBER(
            "G0918",
            "unusable-number",
            "The number {found} at {at} is longer than can be kept exactly; numbers have at most {digits} digits "
                    + "and {places} places after the point.");

    private final Kind kind;

    JsonCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
