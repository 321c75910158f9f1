package dev.gambrel.conformance.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.conformance.documents.Documents.Block;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.PlainReport;
import dev.gambrel.text.SourceText;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example of the language reference compiles without a finding, and every statement is told of. */
class LanguageReferenceTest {
    private static final String PAGE = "spec-lang/LANGUAGE.md";
    private static final String SPREADSHEET = "spec-lang/FROM-A-SPREADSHEET.md";
    private static final String HEAD = "language 1\nuse \"catalogue:sheep\"\n";
    private static final String SPECIFICATION =
            "specification \"Reference\" revision 1 for sheep\ncarcass cold, 20 kg to 24 kg\n";
    private static final String STREAMS =
            "stream diced, saleable\nstream mince, saleable\nstream stock bones, by-product\nstream bin, waste\n";
    private static final String CUTS = "rest -> mince\n";

    static Stream<Block> examples() {
        return Stream.of(PAGE, SPREADSHEET)
                .flatMap(page -> Documents.blocks(page).stream())
                .filter(block -> block.kind().startsWith("cuts"));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void an_example_compiles_without_a_finding(Block example) {
        List<Diagnostic> findings = new SpecCompiler()
                .compile(new SourceText("example.cuts", whole(example)), LanguageReferenceTest::legs)
                .diagnostics();
        assertEquals("", new PlainReport(PlainReport.Paint.NONE).print(findings, 50));
    }

    /** What an example revises: the first example of the page. */
    private static Found legs(String name, String user) {
        String first = examples().findFirst().orElseThrow().text();
        return name.equals("legs.cuts")
                ? new Found.Text(new SourceText(name, first))
                : new Found.Refused(FileCode.MISSING, 0);
    }

    @Test
    void there_are_examples_of_each_kind() {
        assertEquals(
                List.of("cuts", "cuts cut", "cuts file", "cuts revision"),
                examples().map(Block::kind).distinct().sorted().toList());
    }

    @ParameterizedTest
    @EnumSource(Keyword.class)
    void every_statement_stands_in_the_grammar_summary(Keyword keyword) {
        String page = Documents.text(PAGE);
        String summary = page.substring(page.indexOf("## Grammar summary"));
        assertTrue(summary.contains(keyword.word() + " "), keyword.word());
    }

    /** Puts round a part of a file what it needs to stand alone. */
    private static String whole(Block example) {
        String text = example.text();
        return switch (example.kind()) {
            case "cuts", "cuts revision" -> text;
            case "cuts cut" ->
                HEAD + SPECIFICATION + STREAMS + "cut leg 33 %, two per carcass {\n" + text
                        + (text.contains("rest ->") ? "" : CUTS) + "}\n" + CUTS;
            default ->
                HEAD
                        + (text.contains("specification ") ? "" : SPECIFICATION)
                        + (text.contains("stream ") ? "" : STREAMS)
                        + text
                        + CUTS;
        };
    }
}
