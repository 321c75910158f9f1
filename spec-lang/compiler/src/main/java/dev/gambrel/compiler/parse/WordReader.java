package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.Token;

/** Turns the tokens of a text into words that may leave the parser. */
final class WordReader {
    private WordReader() {}

    static List<Word> words(SourceText text, List<? extends Token> tokens, Offsets offsets) {
        List<Word> words = new ArrayList<>(tokens.size());
        for (Token token : tokens) {
            Span span = offsets.of(token);
            words.add(new Word(kind(token.getType()), text.slice(span), span));
        }
        return words;
    }

    private static Word.Kind kind(int type) {
        return switch (type) {
            case GambrelLexer.NUMBER, GambrelLexer.DECIMAL_COMMA -> Word.Kind.NUMBER;
            case GambrelLexer.STRING, GambrelLexer.OPEN_STRING -> Word.Kind.QUOTATION;
            case GambrelLexer.ARROW -> Word.Kind.ARROW;
            case GambrelLexer.PLUS_MINUS -> Word.Kind.PLUS_MINUS;
            case GambrelLexer.PERCENT -> Word.Kind.PERCENT;
            case GambrelLexer.COMMA -> Word.Kind.COMMA;
            case GambrelLexer.SLASH -> Word.Kind.SLASH;
            case GambrelLexer.MINUS -> Word.Kind.MINUS;
            case GambrelLexer.PLUS -> Word.Kind.PLUS;
            case GambrelLexer.EQUALS, GambrelLexer.MULTIPLIED -> Word.Kind.SIGN;
            case GambrelLexer.LBRACE -> Word.Kind.OPENING_BRACE;
            case GambrelLexer.RBRACE -> Word.Kind.CLOSING_BRACE;
            case GambrelLexer.LPAREN -> Word.Kind.OPENING_BRACKET;
            case GambrelLexer.RPAREN -> Word.Kind.CLOSING_BRACKET;
            case GambrelLexer.COMMENT -> Word.Kind.COMMENT;
            case GambrelLexer.NEWLINE -> Word.Kind.LINE_END;
            case GambrelLexer.STRAY -> Word.Kind.STRAY;
            default -> Word.Kind.WORD;
        };
    }
}
