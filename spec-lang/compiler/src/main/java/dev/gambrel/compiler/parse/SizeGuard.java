package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.limits.Limits;
import java.util.List;
import org.antlr.v4.runtime.Token;

/** Refuses what stands too deep, and too many lines, before anything descends into them or is made of them. */
final class SizeGuard {
    private final Limits limits;
    private final Offsets offsets;
    private final FileReport report;

    SizeGuard(Limits limits, Offsets offsets, FileReport report) {
        this.limits = limits;
        this.offsets = offsets;
        this.report = report;
    }

    boolean passes(List<? extends Token> tokens) {
        int depth = 0;
        int brackets = 0;
        int before = Token.EOF;
        int lines = 0;
        boolean begins = true;
        for (Token token : tokens) {
            int type = token.getType();
            depth = depth(depth, type);
            brackets = type == GambrelLexer.NEWLINE && !goesOn(before) ? 0 : brackets(brackets, type);
            before = type;
            if (Math.max(depth, brackets) > limits.nesting()) {
                report.add(tooDeep(token, Math.max(depth, brackets)));
                return false;
            }
            boolean brace = type == GambrelLexer.LBRACE || type == GambrelLexer.RBRACE;
            lines += begins && type != GambrelLexer.NEWLINE || type == GambrelLexer.RBRACE ? 1 : 0;
            begins = brace || type == GambrelLexer.NEWLINE;
        }
        if (lines > 2L * limits.declarations()) {
            report.add(tooManyLines());
            return false;
        }
        return true;
    }

    private static int depth(int depth, int type) {
        if (type == GambrelLexer.LBRACE) {
            return depth + 1;
        }
        return type == GambrelLexer.RBRACE ? Math.max(0, depth - 1) : depth;
    }

    /** Whether an equation goes on in the next line. */
    private static boolean goesOn(int before) {
        return switch (before) {
            case GambrelLexer.PLUS,
                    GambrelLexer.MINUS,
                    GambrelLexer.MULTIPLIED,
                    GambrelLexer.SLASH,
                    GambrelLexer.NEWLINE -> true;
            default -> false;
        };
    }

    private static int brackets(int depth, int type) {
        if (type == GambrelLexer.LPAREN) {
            return depth + 1;
        }
        return type == GambrelLexer.RPAREN ? Math.max(0, depth - 1) : depth;
    }

    private Diagnostic tooDeep(Token brace, int depth) {
        String help = brace.getType() == GambrelLexer.LPAREN
                ? "Close the brackets, or write a part of the estimate as one of its own."
                : "Close the braces of a cut before the next cut of the same carcass begins.";
        return report.finding(SyntaxCode.TOO_DEEP, offsets.of(brace))
                .with("found", depth)
                .with("allowed", limits.nesting())
                .help(help);
    }

    /** Lines here count closing braces too, so twice as many are let through as there may be statements. */
    private Diagnostic tooManyLines() {
        return Diagnostic.of(
                        FileCode.TOO_MANY_LINES, new Place.InFile(report.text().name()))
                .with("allowed", limits.declarations())
                .help("Divide the specification into several.");
    }
}
