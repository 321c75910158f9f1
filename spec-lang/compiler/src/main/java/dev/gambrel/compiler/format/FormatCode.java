package dev.gambrel.compiler.format;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about laying a text out. All are errors. */
public enum FormatCode implements Code {
    /** The text laid out would be read as something else. */
    WORDS_CHANGED(
            "G1601",
            "format-words-changed",
            "Laid out anew, the text would not be read the same from here on, so it is left as it is."),
    /** The text laid out would be larger than is taken. */
    TOO_LARGE(
            "G1602",
            "format-too-large",
            "Laid out anew, the file {file} would be {found} bytes, and at most {allowed} are taken, so it is left as"
                    + " it is.");

    private final Kind kind;

    FormatCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
