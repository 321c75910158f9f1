package dev.gambrel.fuzzing;

import dev.gambrel.compiler.parse.SpecParser;
import dev.gambrel.compiler.syntax.SpecFile;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.FirstFindings;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The lines of a text: each within its text and after the one before, and the same when read again. */
public final class ParserTarget {
    private static final SpecParser PARSER = new SpecParser(Limits.DEFAULT);

    private ParserTarget() {}

    /**
     * Holds one text to it.
     *
     * @param file any bytes
     */
    public static void fuzzerTestOneInput(byte[] file) {
        SourceText text = new SourceText("any.cuts", new String(file, StandardCharsets.UTF_8));
        FirstFindings found = new FirstFindings();
        SpecFile read = PARSER.parse(text, found);
        List<Diagnostic> findings = found.list();
        FindingsHold.all(findings);
        areInOrder(text, read.statements(), 0, text.text().length());
        FirstFindings again = new FirstFindings();
        Holds.isSame(read, PARSER.parse(text, again), "what is read twice");
        Holds.isSame(findings, again.list(), "what is found twice");
    }

    private static void areInOrder(SourceText text, List<Statement> lines, int from, int to) {
        int at = from;
        for (Statement line : lines) {
            FindingsHold.within(text, line.span());
            int before = at;
            Holds.isTrue(before <= line.span().start(), () -> "lines lie over one another at " + before);
            Holds.isTrue(line.span().end() <= to, () -> "a line ends after its block, at " + to);
            at = line.span().end();
            areInOrder(text, body(line), line.span().start(), line.span().end());
        }
    }

    private static List<Statement> body(Statement line) {
        return line instanceof Statement.Declaration declaration
                ? declaration.body()
                : ((Statement.Unknown) line).body();
    }
}
