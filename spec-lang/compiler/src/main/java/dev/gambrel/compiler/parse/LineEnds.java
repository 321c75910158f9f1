package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/** Ends every line: puts a line end of no width before a closing brace and at the end of the text, where there is none. */
final class LineEnds {
    private LineEnds() {}

    static List<Token> complete(List<? extends Token> tokens) {
        List<Token> complete = new ArrayList<>(tokens.size() + 16);
        Token before = null;
        for (Token token : tokens) {
            if (token.getType() == GambrelLexer.RBRACE && isOpen(before)) {
                complete.add(lineEnd(token, token.getStartIndex()));
            }
            complete.add(token);
            if (token.getChannel() == Token.DEFAULT_CHANNEL) {
                before = token;
            }
        }
        if (!tokens.isEmpty()) {
            endText(tokens.get(tokens.size() - 1), complete);
        }
        return complete;
    }

    /** After a comment too, so that a text is the same with and without a line end after its last line. */
    private static void endText(Token last, List<Token> complete) {
        if (last.getType() != GambrelLexer.NEWLINE) {
            complete.add(lineEnd(last, last.getStopIndex() + 1));
        }
    }

    private static boolean isOpen(Token before) {
        return before != null && before.getType() != GambrelLexer.NEWLINE && before.getType() != GambrelLexer.LBRACE;
    }

    private static Token lineEnd(Token near, int at) {
        CommonToken end = new CommonToken(near);
        end.setType(GambrelLexer.NEWLINE);
        end.setChannel(Token.DEFAULT_CHANNEL);
        end.setStartIndex(at);
        end.setStopIndex(at - 1);
        return end;
    }
}
