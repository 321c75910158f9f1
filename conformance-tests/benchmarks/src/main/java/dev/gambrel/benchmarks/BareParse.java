package dev.gambrel.benchmarks;

import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.compiler.internal.grammar.GambrelParser;
import dev.gambrel.compiler.internal.grammar.GambrelParser.FileContext;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.atn.PredictionMode;

/** ANTLR's parse tree of a sound text and nothing else: the floor under any compiler with this grammar. */
final class BareParse {
    private BareParse() {}

    /**
     * Parses.
     *
     * @param text a specification without faults, every closing brace on a line of its own
     * @return the parse tree
     * @throws org.antlr.v4.runtime.misc.ParseCancellationException if there is a fault
     */
    static FileContext of(String text) {
        GambrelLexer lexer = new GambrelLexer(CharStreams.fromString(text));
        GambrelParser parser = new GambrelParser(new CommonTokenStream(lexer));
        parser.setErrorHandler(new BailErrorStrategy());
        parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
        return parser.file();
    }
}
