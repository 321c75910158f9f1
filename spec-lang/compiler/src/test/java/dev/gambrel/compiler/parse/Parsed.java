package dev.gambrel.compiler.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.SpecFile;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.List;

/** A text read into lines for tests. */
record Parsed(SourceText text, SpecFile file, List<Diagnostic> findings) {
    static Parsed of(String written) {
        SourceText text = new SourceText("hogget.cuts", written);
        List<Diagnostic> findings = new ArrayList<>();
        SpecFile file = new SpecParser(Limits.DEFAULT).parse(text, findings::add);
        return new Parsed(text, file, findings);
    }

    /** Lines that must be read without a finding. */
    static List<Declaration> lines(String written) {
        Parsed parsed = of(written);
        assertEquals(List.of(), parsed.messages());
        return parsed.declarations();
    }

    static Declaration line(String written) {
        List<Declaration> lines = lines(written);
        assertEquals(1, lines.size());
        return lines.get(0);
    }

    static String name(String written) {
        return line(written).names().get(0).text().text();
    }

    /** The only clause of the only line. */
    static Clause clause(String written) {
        List<Clause> clauses = line(written).clauses();
        assertEquals(1, clauses.size());
        return clauses.get(0);
    }

    List<Declaration> declarations() {
        return file.statements().stream()
                .filter(Declaration.class::isInstance)
                .map(Declaration.class::cast)
                .toList();
    }

    List<String> messages() {
        return findings.stream().map(Diagnostic::message).toList();
    }

    String slice(Span span) {
        return text.slice(span);
    }

    /** What each finding underlines. */
    List<String> underlined() {
        return findings.stream()
                .map(finding -> slice(((Place.InText) finding.place()).span()))
                .toList();
    }
}
