package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.KeywordLexer;
import dev.gambrel.compiler.internal.grammar.GambrelLexer;

/** What a processor calls the pieces of a line. */
final class FriendlyTokens {
    private FriendlyTokens() {}

    /** Words for a kind of token; empty where naming it would not help. */
    static String words(int type) {
        return switch (type) {
            case GambrelLexer.NUMBER, GambrelLexer.DECIMAL_COMMA -> "a figure";
            case GambrelLexer.STRING -> "words in quotation marks";
            case GambrelLexer.WORD -> "a name";
            case GambrelLexer.ARROW -> "an arrow -> and a stream";
            case GambrelLexer.PLUS_MINUS -> "a spread after ±";
            case GambrelLexer.PERCENT -> "%";
            case GambrelLexer.COMMA -> "a comma";
            case GambrelLexer.LBRACE -> "a brace {";
            case GambrelLexer.RBRACE -> "a brace }";
            case GambrelLexer.LPAREN -> "a bracket (";
            case GambrelLexer.RPAREN -> "a bracket )";
            case GambrelLexer.EQUALS -> "=";
            case GambrelLexer.PLUS -> "+";
            case GambrelLexer.MULTIPLIED -> "×";
            case GambrelLexer.SLASH, GambrelLexer.MINUS, GambrelLexer.STRAY, GambrelLexer.OPEN_STRING -> "";
            case GambrelLexer.NEWLINE, -1 -> "the end of the line";
            default -> "“" + KeywordLexer.word(type) + "”";
        };
    }
}
