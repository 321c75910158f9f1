package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.compiler.internal.grammar.GambrelParser;
import dev.gambrel.compiler.internal.grammar.GambrelParser.FileContext;
import dev.gambrel.compiler.source.Texts;
import dev.gambrel.compiler.syntax.SpecFile;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.misc.ParseCancellationException;

/**
 * Reads a text into lines. Thread-safe; costs O(length of the text).
 *
 * <p>A text that reads without fault takes one fast pass. Only where that pass stops is the text read again, this time
 * reporting each line that cannot be read and going on with the next.
 */
public final class SpecParser {
    private final Limits limits;

    /**
     * A parser that refuses deeper nesting than the limits allow before it descends.
     *
     * @param limits how much is taken
     */
    public SpecParser(Limits limits) {
        this.limits = limits;
    }

    /**
     * Reads one text by itself.
     *
     * @param text any text
     * @param found takes what cannot be read
     * @return the lines that could be read; those that could only be read in part are marked as damaged
     */
    public SpecFile parse(SourceText text, Consumer<Diagnostic> found) {
        return parse(text, new Texts(), found);
    }

    /**
     * Reads one text of several.
     *
     * @param text any text
     * @param texts where it is laid down; spans are counted there
     * @param found takes what cannot be read
     * @return the lines that could be read; those that could only be read in part are marked as damaged
     */
    public SpecFile parse(SourceText text, Texts texts, Consumer<Diagnostic> found) {
        int start = texts.add(text);
        Offsets offsets = new Offsets(start, text.text());
        FileReport report = new FileReport(texts, text, start, found);
        List<? extends Token> words = words(text);
        if (!new SizeGuard(limits, offsets, report).passes(words)) {
            return new SpecFile(text, start, List.of());
        }
        Set<Integer> strayLines = StrayTokens.report(words, offsets, report);
        CommonTokenStream tokens = new CommonTokenStream(new ListTokenSource(LineEnds.complete(words), text.name()));
        try {
            GambrelParser parser = parser(tokens);
            parser.setErrorHandler(new BailErrorStrategy());
            parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
            return convert(parser.file(), Set.of(), offsets, report);
        } catch (ParseCancellationException cannotBeReadStraight) {
            return parseWithRecovery(tokens, strayLines, offsets, report);
        }
    }

    private static SpecFile parseWithRecovery(
            CommonTokenStream tokens, Set<Integer> strayLines, Offsets offsets, FileReport report) {
        tokens.seek(0);
        GambrelParser parser = parser(tokens);
        LineRecovery recovery = new LineRecovery(new SyntaxMessages(offsets, report, strayLines));
        parser.setErrorHandler(recovery);
        FileContext file = parser.file();
        return convert(file, recovery.damaged(), offsets, report);
    }

    private static SpecFile convert(
            FileContext file, Set<ParserRuleContext> damaged, Offsets offsets, FileReport report) {
        List<Statement> statements = new StatementConverter(offsets, report, damaged).file(file);
        return new SpecFile(report.text(), report.start(), statements);
    }

    private static List<? extends Token> words(SourceText text) {
        GambrelLexer lexer = new GambrelLexer(CharStreams.fromString(text.text(), text.name()));
        lexer.removeErrorListeners();
        return lexer.getAllTokens();
    }

    private static GambrelParser parser(CommonTokenStream tokens) {
        GambrelParser parser = new GambrelParser(tokens);
        parser.removeErrorListeners();
        return parser;
    }
}
