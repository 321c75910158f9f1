package dev.gambrel.compiler;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import java.util.List;
import java.util.Map;

/** Texts compiled for tests. */
public final class Compiled {
    /** A sheet to which cuts, streams and notes can be added; it needs no catalogue. */
    public static final String HEAD = """
            language 1
            species sheep
            specification "Marram hogget" revision 3 for sheep
            carcass cold, 20 kg to 24 kg
            stream mince, saleable
            stream bones, by-product
            """;

    private Compiled() {}

    public static Result<Compilation> text(String text) {
        return new SpecCompiler().compile(new SourceText("hogget.cuts", text), Sources.none());
    }

    /** A sheet after the usual head. */
    public static Result<Compilation> sheet(String lines) {
        return text(HEAD + lines);
    }

    public static CutTree tree(String lines) {
        Result<Compilation> result = sheet(lines);
        assertEquals(List.of(), messages(result));
        return result.orElseThrow().tree();
    }

    public static List<String> messages(Result<?> result) {
        return result.diagnostics().stream().map(Diagnostic::message).toList();
    }

    public static List<Code> codes(Result<?> result) {
        return result.diagnostics().stream().map(Diagnostic::code).toList();
    }

    /** The words that a finding underlines. */
    public static String underlined(Diagnostic finding) {
        Place.InText in = inText(finding.place());
        return in.text().slice(in.span());
    }

    /** "hogget.cuts:3" */
    public static String line(Diagnostic finding) {
        Place.InText in = inText(finding.place());
        return in.text().name() + ":" + in.text().position(in.span().start()).line();
    }

    private static Place.InText inText(Place place) {
        return place instanceof Place.Written written ? written.text() : (Place.InText) place;
    }

    /** Files by name, wherever they are used. */
    public static Sources files(Map<String, String> files) {
        return (name, user) -> files.containsKey(name)
                ? new Found.Text(new SourceText(name, files.get(name)))
                : new Found.Refused(FileCode.MISSING, 0);
    }
}
