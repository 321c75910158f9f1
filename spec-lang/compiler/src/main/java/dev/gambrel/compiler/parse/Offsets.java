package dev.gambrel.compiler.parse;

import dev.gambrel.text.Span;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;

/**
 * Turns the code-point indexes of tokens into UTF-16 offsets, which differ after a character such as an emoji, counted from
 * where the text begins among all texts of the compilation.
 */
final class Offsets {
    private final int first;
    private final int[] utf16;

    /** Costs nothing for a text without such characters. */
    Offsets(int first, String text) {
        this.first = first;
        int codePoints = text.codePointCount(0, text.length());
        this.utf16 = codePoints == text.length() ? new int[0] : map(text, codePoints);
    }

    private static int[] map(String text, int codePoints) {
        int[] map = new int[codePoints + 1];
        int offset = 0;
        for (int i = 0; i < codePoints; i++) {
            map[i] = offset;
            offset += Character.charCount(text.codePointAt(offset));
        }
        map[codePoints] = offset;
        return map;
    }

    private int at(int codePoint) {
        return first + (utf16.length == 0 ? codePoint : utf16[codePoint]);
    }

    Span of(Token token) {
        return token.getType() == Token.EOF
                ? new Span(at(token.getStartIndex()), at(token.getStartIndex()))
                : new Span(at(token.getStartIndex()), at(token.getStopIndex() + 1));
    }

    Span of(Token first, Token last) {
        return of(first).cover(of(last));
    }

    /** From the first to the last token of a rule; a rule that took nothing is a bare position. */
    Span of(ParserRuleContext rule) {
        Token stop = rule.getStop();
        boolean empty = stop == null || stop.getTokenIndex() < rule.getStart().getTokenIndex();
        if (empty) {
            int start = of(rule.getStart()).start();
            return new Span(start, start);
        }
        return of(rule.getStart(), stop);
    }
}
