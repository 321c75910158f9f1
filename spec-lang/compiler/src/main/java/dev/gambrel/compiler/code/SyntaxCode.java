package dev.gambrel.compiler.code;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about a line that cannot be read. All are errors. */
public enum SyntaxCode implements Code {
    /** Braces inside braces beyond what is taken. */
    TOO_DEEP("G0104", "too-deep", "Braces or brackets stand {found} deep here; at most {allowed} are taken."),

    /** A word in a place where it means nothing. */
    DOES_NOT_FIT("G0201", "does-not-fit", "“{found}” does not fit here."),
    /** A line that begins with no keyword. */
    UNKNOWN_LINE("G0202", "unknown-line", "No line begins with “{found}”."),
    /** A line that stops before it is complete. */
    UNFINISHED_LINE("G0203", "unfinished-line", "This {line} line stops too early."),
    /** A brace that is never closed. */
    OPEN_BRACE("G0204", "open-brace", "The brace that opens here is never closed."),
    /** A closing brace with nothing to close. */
    STRAY_BRACE("G0205", "stray-brace", "This brace closes nothing."),
    /** Two statements on one line. */
    TWO_ON_A_LINE("G0206", "two-on-a-line", "A second statement, “{found}”, begins on the line of the first."),
    /** A quotation that is never closed. */
    OPEN_QUOTE("G0207", "open-quote", "The quotation mark that opens here is not closed on this line."),
    /** A comma in a number. */
    COMMA_IN_NUMBER("G0208", "comma-in-number", "The number {found} has a comma in it."),
    /** A character that the language does not use. */
    STRAY_CHARACTER("G0209", "stray-character", "The character {found} has no meaning here."),
    /** A fat limit that does not say how it is judged. */
    LIMIT_WITHOUT_PLACE(
            "G0705", "limit-without-place", "The limit does not say whether it holds at any point or on average."),
    /** Braces that belong to no line. */
    LONE_BLOCK("G0210", "lone-block", "These braces belong to no line."),
    /** A name that is too long or holds what a name cannot. */
    BAD_NAME("G0214", "bad-name", "“{found}” cannot be a name."),
    /** More digits than are taken. */
    NUMBER_TOO_LONG("G0215", "number-too-long", "The number {found} is longer than is taken."),
    /** A fraction that is no exact decimal. */
    INEXACT_FRACTION("G0216", "inexact-fraction", "The fraction {found} is not an exact decimal.");

    private final Kind kind;

    SyntaxCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
