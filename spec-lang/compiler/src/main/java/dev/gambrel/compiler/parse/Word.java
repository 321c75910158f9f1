package dev.gambrel.compiler.parse;

import dev.gambrel.text.Span;

/**
 * A piece of a text as the language cuts it: a word, a figure, a sign, a comment or the end of a line. Blanks belong to
 * none; every other character belongs to one.
 *
 * @param kind what it is
 * @param text its characters as written
 * @param span where it stands
 */
public record Word(Kind kind, String text, Span span) {
    /** What a piece of a text is. */
    public enum Kind {
        /** A word of a name or of the language. */
        WORD,
        /** A figure without its sign. */
        NUMBER,
        /** Words in quotation marks, closed or not. */
        QUOTATION,
        /** The sign before a stream. */
        ARROW,
        /** The sign before a spread. */
        PLUS_MINUS,
        /** The sign of a share. */
        PERCENT,
        /** Between clauses, and at the end of a line that goes on. */
        COMMA,
        /** Within a fraction. */
        SLASH,
        /** A hyphen or a dash that stands in no word. */
        MINUS,
        /** A plus of an equation, or at the end of a class such as O+. */
        PLUS,
        /** An equals sign or a times of an equation. */
        SIGN,
        /** Opens a block. */
        OPENING_BRACE,
        /** Closes a block. */
        CLOSING_BRACE,
        /** Opens a list of regions. */
        OPENING_BRACKET,
        /** Closes a list of regions. */
        CLOSING_BRACKET,
        /** Two slashes and the rest of the line. */
        COMMENT,
        /** The end of a line. */
        LINE_END,
        /** A character that the language does not use. */
        STRAY
    }
}
