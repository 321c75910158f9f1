package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.compiler.internal.grammar.GambrelParser.StatementContext;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.antlr.v4.runtime.DefaultErrorStrategy;
import org.antlr.v4.runtime.InputMismatchException;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenStream;

/**
 * What to do where a line cannot be read: say so once, skip to its end, and go on. Nothing is guessed: no word is put in
 * or left out to make a line fit.
 */
final class LineRecovery extends DefaultErrorStrategy {
    private final SyntaxMessages messages;
    private final Set<ParserRuleContext> damaged = Collections.newSetFromMap(new IdentityHashMap<>());

    LineRecovery(SyntaxMessages messages) {
        this.messages = messages;
    }

    /** The statements that could only be read in part. */
    Set<ParserRuleContext> damaged() {
        return damaged;
    }

    @Override
    public void sync(Parser parser) {
        // A line is read word by word; skipping ahead would hide the word that does not fit.
    }

    @Override
    public Token recoverInline(Parser parser) {
        throw new InputMismatchException(parser);
    }

    @Override
    public void reportError(Parser parser, RecognitionException fault) {
        if (!inErrorRecoveryMode(parser)) {
            beginErrorCondition(parser);
            RuleContext rule = parser.getContext();
            while (rule != null && !(rule instanceof StatementContext)) {
                rule = rule.getParent();
            }
            if (rule != null) {
                damaged.add((ParserRuleContext) rule);
            }
            messages.report(parser, fault, (StatementContext) rule);
        }
    }

    @Override
    public void recover(Parser parser, RecognitionException fault) {
        TokenStream tokens = parser.getInputStream();
        while (!endsLine(tokens.LA(1)) && !(startsLine(tokens) && isKeyword(tokens.LA(1)))) {
            parser.consume();
        }
    }

    private static boolean endsLine(int type) {
        return switch (type) {
            case GambrelLexer.NEWLINE, GambrelLexer.LBRACE, GambrelLexer.RBRACE, Token.EOF -> true;
            default -> false;
        };
    }

    static boolean isKeyword(int type) {
        return type >= GambrelLexer.LANGUAGE && type <= GambrelLexer.PUBLISHED;
    }

    private static boolean startsLine(TokenStream tokens) {
        Token before = tokens.LT(-1);
        return before == null || before.getType() == GambrelLexer.NEWLINE;
    }
}
