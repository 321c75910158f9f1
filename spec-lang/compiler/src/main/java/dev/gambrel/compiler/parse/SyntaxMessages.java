package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.compiler.internal.grammar.GambrelParser;
import dev.gambrel.compiler.internal.grammar.GambrelParser.StatementContext;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;

/** Puts into words what does not fit in a line, and what would. */
final class SyntaxMessages {
    private static final int MOST_ALTERNATIVES = 6;

    private final Offsets offsets;
    private final FileReport report;
    private final Set<Integer> strayLines;

    SyntaxMessages(Offsets offsets, FileReport report, Set<Integer> strayLines) {
        this.strayLines = strayLines;
        this.offsets = offsets;
        this.report = report;
    }

    void report(Parser parser, RecognitionException fault, StatementContext statement) {
        Token offending = fault.getOffendingToken();
        if (isSignOfAnEquation(offending) && !mayHaveAnEquation(statement)) {
            if (!strayLines.contains(report.lineOf(offsets.of(offending)))) {
                report.add(StrayTokens.stray(offending, offsets, report));
            }
        } else if (parser.getRuleContext() instanceof GambrelParser.BlockContext block) {
            report.add(openBrace(block));
        } else if (strayLines.contains(report.lineOf(where(parser, offending)))) {
            return;
        } else if (parser.getRuleContext() instanceof GambrelParser.FatLimitContext limit && limit.MOST() != null) {
            report.add(limitWithoutPlace(limit));
        } else {
            report.add(doesNotFit(parser, fault, offending, statement));
        }
    }

    private static boolean isSignOfAnEquation(Token token) {
        return switch (token.getType()) {
            case GambrelLexer.EQUALS, GambrelLexer.PLUS, GambrelLexer.MULTIPLIED -> true;
            default -> false;
        };
    }

    private static boolean mayHaveAnEquation(StatementContext statement) {
        int first = statement == null ? Token.EOF : statement.getStart().getType();
        return first == GambrelLexer.ESTIMATE || first == GambrelLexer.MEASURE;
    }

    private Diagnostic doesNotFit(
            Parser parser, RecognitionException fault, Token offending, StatementContext statement) {
        Optional<Keyword> keyword = statement == null
                ? Optional.empty()
                : Keyword.of(statement.getStart().getText());
        String line = keyword.map(Keyword::word).orElse("specification");
        if (LineRecovery.isKeyword(offending.getType()) && parser.getRuleContext() instanceof StatementContext) {
            return twoOnALine(offending);
        }
        Span where = where(parser, offending);
        Diagnostic finding = stops(offending)
                ? report.finding(SyntaxCode.UNFINISHED_LINE, where)
                : report.finding(SyntaxCode.DOES_NOT_FIT, where).with("found", offending.getText());
        finding = parser.getRuleContext() instanceof StatementContext
                ? finding.with("line", line).help(afterTheEnd(keyword, offending))
                : withExpected(finding.with("line", line), fault.getExpectedTokens(), offending);
        return keyword.isPresent()
                ? finding.help("Such a line goes: " + keyword.get().form())
                : finding;
    }

    private static String afterTheEnd(Optional<Keyword> keyword, Token offending) {
        boolean isFigure = offending.getType() == GambrelLexer.NUMBER;
        if (keyword.filter(k -> k == Keyword.REST_LINE).isPresent()) {
            return isFigure
                    ? "A rest has no share of its own, since it takes what is left: take the figure out."
                    : "Put an arrow before the stream: rest -> " + offending.getText();
        } else if (offending.getType() == GambrelLexer.MINUS) {
            return "Write “to” between the two ends of a range, as in 20 kg to 24 kg, and an arrow as -> without a gap.";
        } else if (offending.getType() == GambrelLexer.PER) {
            return "Write the count in words: two per carcass.";
        } else if (offending.getType() == GambrelLexer.TO) {
            return "Write an arrow before a stream: -> mince";
        }
        return "Put a comma before it if it belongs to the line, or take it out.";
    }

    private Diagnostic twoOnALine(Token second) {
        return report.finding(SyntaxCode.TWO_ON_A_LINE, offsets.of(second))
                .with("found", second.getText())
                .help("If it belongs to what stands before it, put a comma between them.")
                .help("If not, begin a new line here.");
    }

    private Diagnostic limitWithoutPlace(GambrelParser.FatLimitContext limit) {
        return report.finding(
                        SyntaxCode.LIMIT_WITHOUT_PLACE,
                        offsets.of(limit.getStart(), limit.MOST().getSymbol()))
                .help("Write “at any point” or “on average” after the figure: neither follows from the other.");
    }

    private Diagnostic openBrace(GambrelParser.BlockContext block) {
        return report.finding(SyntaxCode.OPEN_BRACE, offsets.of(block.getStart()))
                .help("Put a closing brace } on a line of its own where this cut ends.");
    }

    private static boolean stops(Token offending) {
        return offending.getType() == GambrelLexer.NEWLINE || offending.getType() == Token.EOF;
    }

    /** The word that does not fit; where a line stops too early, its last one. */
    private Span where(Parser parser, Token offending) {
        return stops(offending) ? lastWord(parser, offending) : offsets.of(offending);
    }

    private Span lastWord(Parser parser, Token offending) {
        for (int i = offending.getTokenIndex() - 1; i >= 0; i--) {
            Token token = parser.getInputStream().get(i);
            if (token.getChannel() == Token.DEFAULT_CHANNEL && token.getType() != GambrelLexer.NEWLINE) {
                return offsets.of(token);
            }
        }
        return offsets.of(offending);
    }

    private Diagnostic withExpected(Diagnostic finding, IntervalSet expected, Token offending) {
        Set<String> words = new LinkedHashSet<>();
        if (expected != null) {
            expected.toList().forEach(type -> words.add(FriendlyTokens.words(type)));
        }
        List<TradeName> keywords = words.stream()
                .filter(word -> word.startsWith("“"))
                .map(word -> TradeName.of(word.substring(1, word.length() - 1)))
                .toList();
        Optional<TradeName> near = NearestName.of(offending.getText(), keywords);
        if (near.isPresent() && !words.contains("a name")) {
            return report.didYouMean(finding, offsets.of(offending), near.get());
        }
        words.remove("");
        return words.isEmpty() || words.size() > MOST_ALTERNATIVES
                ? finding
                : finding.note("What may stand here: " + String.join(", ", words) + ".");
    }
}
