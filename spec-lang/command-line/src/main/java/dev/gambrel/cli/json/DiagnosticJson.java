package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.diagnostic.Argument;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Fix;
import dev.gambrel.diagnostic.Label;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.Position;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.allowance.AllowedWarning;
import java.io.IOException;
import java.util.List;

/**
 * Findings as a JSON array. Offsets count UTF-16 characters from 0 and end before the character that they name; lines and
 * columns count from 1.
 */
public final class DiagnosticJson {
    private DiagnosticJson() {}

    /**
     * Writes findings.
     *
     * @param findings in the order in which they shall stand
     * @return a JSON array, ended by a line feed
     */
    public static String write(List<Diagnostic> findings) {
        return write(findings, List.of());
    }

    /**
     * Writes findings, and after them those that are allowed, which have a field {@code allowed} with the reason.
     *
     * @param findings in the order in which they shall stand
     * @param allowed what is allowed, in the order in which it shall stand
     * @return a JSON array, ended by a line feed
     */
    public static String write(List<Diagnostic> findings, List<AllowedWarning> allowed) {
        return Canonical.text(json -> {
            json.writeStartArray();
            for (Diagnostic finding : findings) {
                json.writeStartObject();
                finding(json, finding);
                json.writeEndObject();
            }
            for (AllowedWarning warning : allowed) {
                json.writeStartObject();
                finding(json, warning.finding());
                json.writeStringField("allowed", warning.allowance().reason());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void finding(JsonGenerator json, Diagnostic finding) throws IOException {
        json.writeStringField("code", finding.code().id());
        json.writeStringField("slug", finding.code().slug());
        json.writeStringField("severity", finding.severity().word());
        json.writeStringField("message", finding.message());
        json.writeObjectFieldStart("arguments");
        for (Argument argument : finding.arguments()) {
            argument(json, argument);
        }
        json.writeEndObject();
        json.writeFieldName("place");
        place(json, finding.place());
        related(json, finding.related());
        strings(json, "notes", finding.notes());
        strings(json, "help", finding.help());
        fixes(json, finding.fixes());
    }

    private static void argument(JsonGenerator json, Argument argument) throws IOException {
        json.writeFieldName(argument.name());
        if (argument instanceof Argument.Count count) {
            json.writeNumber(count.count());
        } else if (argument instanceof Argument.Measure measure) {
            json.writeStartObject();
            json.writeNumberField("amount", measure.quantity().amount());
            json.writeStringField("unit", measure.quantity().unit().symbol());
            json.writeEndObject();
        } else {
            json.writeString(argument.shown());
        }
    }

    static void place(JsonGenerator json, Place place) throws IOException {
        json.writeStartObject();
        if (place instanceof Place.Written written) {
            tree(json, written.tree());
            text(json, written.text());
        } else if (place instanceof Place.InText text) {
            text(json, text);
        } else if (place instanceof Place.InTree tree) {
            tree(json, tree);
        } else if (place instanceof Place.InFile file) {
            json.writeStringField("file", file.name());
        }
        json.writeEndObject();
    }

    private static void tree(JsonGenerator json, Place.InTree tree) throws IOException {
        strings(json, "path", tree.path().names().stream().map(TradeName::text).toList());
        json.writeStringField(
                "aspect",
                tree.aspect().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
    }

    private static void text(JsonGenerator json, Place.InText text) throws IOException {
        Position start = text.text().position(text.span().start());
        Position end = text.text().position(text.span().end());
        json.writeStringField("file", text.text().name());
        json.writeNumberField("start", text.span().start());
        json.writeNumberField("end", text.span().end());
        json.writeNumberField("line", start.line());
        json.writeNumberField("column", start.column());
        json.writeNumberField("endLine", end.line());
        json.writeNumberField("endColumn", end.column());
    }

    private static void related(JsonGenerator json, List<Label> labels) throws IOException {
        json.writeArrayFieldStart("related");
        for (Label label : labels) {
            json.writeStartObject();
            json.writeStringField("words", label.words());
            json.writeFieldName("place");
            place(json, label.place());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void fixes(JsonGenerator json, List<Fix> fixes) throws IOException {
        json.writeArrayFieldStart("fixes");
        for (Fix fix : fixes) {
            json.writeStartObject();
            json.writeFieldName("place");
            place(json, fix.place());
            json.writeStringField("replacement", fix.replacement());
            json.writeBooleanField("certain", fix.certain());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void strings(JsonGenerator json, String name, List<String> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
