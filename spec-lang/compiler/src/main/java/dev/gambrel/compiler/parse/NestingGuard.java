package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import java.util.List;
import org.antlr.v4.runtime.Token;

/** Refuses braces that stand too deep, before anything descends into them. */
final class NestingGuard {
    private NestingGuard() {}

    static boolean passes(List<? extends Token> tokens, int allowed, Offsets offsets, FileReport report) {
        int depth = 0;
        for (Token token : tokens) {
            if (token.getType() == GambrelLexer.LBRACE) {
                depth++;
                if (depth > allowed) {
                    report.add(report.finding(SyntaxCode.TOO_DEEP, offsets.of(token))
                            .with("found", depth)
                            .with("allowed", allowed)
                            .help("Close the braces of a cut before the next cut of the same carcass begins."));
                    return false;
                }
            } else if (token.getType() == GambrelLexer.RBRACE) {
                depth = Math.max(0, depth - 1);
            }
        }
        return true;
    }
}
