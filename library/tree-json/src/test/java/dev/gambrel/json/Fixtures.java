package dev.gambrel.json;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.located.JsonCode;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Files to read, and what is found in them. */
final class Fixtures {
    /** The smallest cut tree there is. */
    static final String SMALLEST = """
            {
              "format": "gambrel cut tree",
              "version": 1,
              "specification": {"title": "Marram hogget", "revision": 3},
              "carcass": {"basis": "cold"},
              "species": {"name": "sheep"}
            }
            """;

    private Fixtures() {}

    static String lamb() {
        return resource("lamb-in-two-saddles.json");
    }

    static String marramHogget() {
        return resource("marram-hogget.json");
    }

    static String everyKind() {
        return resource("every-kind.json");
    }

    private static String resource(String name) {
        try (InputStream in = Fixtures.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The smallest tree with something more in it, before its last brace. */
    static String smallestWith(String fields) {
        return SMALLEST.substring(0, SMALLEST.lastIndexOf('\n', SMALLEST.length() - 2)) + ",\n  " + fields + "\n}\n";
    }

    static Result<CutTree> read(String json) {
        return TreeJsonReader.readUnchecked(new SourceText("tree.json", json), Limits.DEFAULT);
    }

    /** Code, underlined text and sentence of the only finding. */
    static Found only(String json) {
        Result<CutTree> result = read(json);
        if (result.diagnostics().size() != 1) {
            throw new AssertionError(
                    result.diagnostics().stream().map(Found::of).toList());
        }
        return Found.of(result.diagnostics().get(0));
    }

    /** A finding as a reader sees it. */
    record Found(JsonCode code, String underlined, String message) {
        static Found of(Diagnostic finding) {
            String underlined =
                    finding.place() instanceof Place.InText in ? in.text().slice(in.span()) : "";
            return new Found((JsonCode) finding.code(), underlined, finding.message());
        }
    }
}
