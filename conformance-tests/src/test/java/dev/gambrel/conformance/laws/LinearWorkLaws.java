package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.compiler.internal.grammar.GambrelParser;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.text.SourceText;
import java.util.function.IntFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.ErrorNode;
import org.antlr.v4.runtime.tree.ParseTreeListener;
import org.antlr.v4.runtime.tree.TerminalNode;

/** Twice the text is twice the work: counted in steps, never in seconds. */
class LinearWorkLaws {
    private static final int LINES = 200;
    private static final double LEEWAY = 0.1;

    private static final String HEAD = """
            language 1
            use "catalogue:sheep"
            specification "Marram hogget" revision 3 for sheep
            carcass cold, 20 kg to 24 kg
            stream mince, saleable
            """;

    private static String repeated(int count, IntFunction<String> line) {
        return HEAD + IntStream.range(0, count).mapToObj(line).collect(Collectors.joining()) + "rest -> mince\n";
    }

    private static void growsInStep(IntFunction<String> line, ToLongFunction<String> work) {
        long once = work.applyAsLong(repeated(LINES, line));
        assertTrue(once >= LINES, "something is counted: " + once);
        for (int times : new int[] {2, 4}) {
            long more = work.applyAsLong(repeated(times * LINES, line));
            assertEquals(times * once, more, LEEWAY * times * once, times + " times the lines");
        }
    }

    private static String cut(int i) {
        return "cut joint " + i + " 0.01 % ± 0.001 %, two per carcass, boneless, also piece " + i + " (US, UK) {\n"
                + "  separate by knife and saw between rib 5 and rib 6\n"
                + "  trim fat to at most 5 mm on average and at most 8 mm at any point 5 % ± 1.2 % -> mince\n}\n";
    }

    private static String broken(int i) {
        return "cut joint " + i + " 0.01 % (\n";
    }

    private static String tooManyOpened(int i) {
        return "cut joint " + i + " 0.01 % ± 0.001 %, two per carcass (\n";
    }

    @Example
    void rules_of_the_grammar_entered() {
        growsInStep(LinearWorkLaws::cut, text -> new Steps().in(text).rules);
        growsInStep(LinearWorkLaws::broken, text -> new Steps().in(text).rules);
    }

    @Example
    void words_taken() {
        growsInStep(LinearWorkLaws::cut, text -> new Steps().in(text).words);
        growsInStep(LinearWorkLaws::tooManyOpened, text -> new Steps().in(text).words);
    }

    @Example
    void findings_of_lines_that_cannot_be_read() {
        growsInStep(LinearWorkLaws::broken, LinearWorkLaws::findings);
    }

    @Example
    void findings_of_rules_of_the_tree() {
        growsInStep(i -> "cut joint " + i + " 0.01 % -> tub\n", LinearWorkLaws::findings);
        growsInStep(i -> "bone claw " + i + " 0.01 % -> mince\n", LinearWorkLaws::findings);
    }

    private static long findings(String text) {
        return new SpecCompiler()
                .compile(new SourceText("hogget.cuts", text), Sources.none())
                .diagnostics()
                .size();
    }

    /** Counts what a parser does. */
    private static final class Steps implements ParseTreeListener {
        private long rules;
        private long words;

        Steps in(String text) {
            GambrelLexer lexer = new GambrelLexer(CharStreams.fromString(text));
            GambrelParser parser = new GambrelParser(new CommonTokenStream(lexer));
            parser.removeErrorListeners();
            parser.addParseListener(this);
            parser.file();
            return this;
        }

        @Override
        public void enterEveryRule(ParserRuleContext rule) {
            rules++;
        }

        @Override
        public void exitEveryRule(ParserRuleContext rule) {
            // Counted when entered.
        }

        @Override
        public void visitTerminal(TerminalNode word) {
            words++;
        }

        @Override
        public void visitErrorNode(ErrorNode word) {
            words++;
        }
    }
}
