package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.format.SpecFormatter;
import dev.gambrel.compiler.parse.SpecParser;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/**
 * A text laid out is read as it was before: the same statements, clauses and figures, the same findings, the same tree; its
 * comments are where they were, and laid out again it stays as it is.
 */
class FormatLaws {
    private static final Pattern SPAN = Pattern.compile("Span\\[start=\\d+, end=\\d+]");

    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

    private static Result<String> format(String text) {
        return new SpecFormatter().format(new SourceText("any.cuts", text));
    }

    private static String formatted(String text) {
        return format(text).orElseThrow();
    }

    /** Everything that the parser says of a text, but not where. */
    private static List<String> read(String text) {
        List<String> said = new ArrayList<>();
        var file = new SpecParser(Limits.DEFAULT).parse(new SourceText("any.cuts", text), f -> said.add(code(f)));
        file.statements()
                .forEach(
                        statement -> said.add(SPAN.matcher(statement.toString()).replaceAll("")));
        return said;
    }

    private static String code(Diagnostic finding) {
        return finding.code().id();
    }

    /** The tree, byte for byte, or what is wrong. */
    private static String compiled(Path file, String text) {
        Result<Compilation> result = Specifications.compile(file, text);
        return result.diagnostics().stream().map(FormatLaws::code).toList()
                + result.value().map(c -> TreeJsonWriter.write(c.tree())).orElse("");
    }

    /** The lines that hold words or a comment: what stands in each, gaps taken out and both spellings of a sign made one. */
    private static List<String> withoutGaps(String text) {
        return LINE_END.splitAsStream(text)
                .map(line ->
                        line.replaceAll("[ \t\u00A0]", "").replace("→", "->").replace("+/-", "±"))
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private static void keepsItsMeaning(Path file, String text) {
        Result<String> result = format(text);
        if (result.value().isEmpty()) {
            List<String> refused =
                    result.diagnostics().stream().map(FormatLaws::code).toList();
            assertEquals(read(text), refused, "what the parser refuses too, and nothing else");
            return;
        }
        String formatted = result.value().get();
        assertEquals(formatted, formatted(formatted), "laid out again");
        assertEquals(read(text), read(formatted), "statements and findings of the parser");
        assertEquals(compiled(file, text), compiled(file, formatted), "tree or findings");
        assertEquals(withoutGaps(text), withoutGaps(formatted), "words and comments, line by line");
    }

    @Example
    void every_specification_on_file_keeps_its_meaning() {
        List<Path> files = Specifications.everywhere();
        files.forEach(file -> keepsItsMeaning(file, text(file)));
        assertTrue(files.size() > 250, files.size() + " files");
    }

    @Provide
    Arbitrary<Path> written() {
        return Arbitraries.of(Specifications.everywhere());
    }

    @Provide
    Arbitrary<List<Edit>> edits() {
        return new NoInputThrowsLaws().edits();
    }

    @Property(tries = 2000, shrinking = ShrinkingMode.BOUNDED)
    void a_specification_changed_anywhere_keeps_its_meaning(
            @ForAll("written") Path file, @ForAll("edits") List<Edit> edits) {
        String text = text(file);
        for (Edit edit : edits) {
            text = edit.of(text);
        }
        keepsItsMeaning(file, text);
    }

    private static String text(Path file) {
        return FolderSources.withoutByteOrderMark(Specifications.text(file));
    }

    @Provide
    Arbitrary<String> soup() {
        NoInputThrowsLaws texts = new NoInputThrowsLaws();
        return Arbitraries.oneOf(texts.soup(), texts.linesOfSomeForm());
    }

    @Property(tries = 2000)
    void any_soup_of_the_language_s_own_words_keeps_its_meaning(@ForAll("soup") String soup) {
        keepsItsMeaning(Specifications.house().get(0), soup);
    }

    /** Found by the laws above: what was told hung on a gap, on an empty line, or on the end of the last line. */
    @Example
    void what_is_told_does_not_hang_on_gaps_and_ends_of_lines() {
        List.of(
                        "{ \\",
                        "omit loin , \\",
                        "\n\n  : waste leg",
                        "cut leg # 33 %\rcut loin # 12 %\rcut 5 5",
                        "// sheep\nalong loin { // language",
                        "// sheep\nalong loin // specification",
                        "carcass in \t skin, head   off",
                        "cut thick" + " ".repeat(200) + "flank 5 %",
                        "streem stock   bones\ncut leg 33 % -> stock bones",
                        "stream mince, w\"aste")
                .forEach(text -> keepsItsMeaning(Specifications.house().get(0), text));
    }

    @Example
    void twice_the_lines_are_twice_the_text() {
        String lines = Specifications.text(Specifications.house().get(0));
        int once = formatted(lines).length();
        for (int times : new int[] {2, 4, 8}) {
            assertEquals(times * once, formatted(lines.repeat(times)).length());
        }
    }
}
