package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.cli.number.report.NumberReport;
import dev.gambrel.cli.number.report.NumberReport.Row;
import dev.gambrel.references.source.Citation;
import java.io.IOException;

/** What a number means as JSON. */
public final class NumberJson {
    private NumberJson() {}

    /**
     * Writes what a number means.
     *
     * @param report the meaning
     * @return a JSON object, ended by a line feed
     */
    public static String write(NumberReport report) {
        return Canonical.text(json -> {
            json.writeStartObject();
            json.writeStringField("format", "gambrel meaning of a number");
            json.writeNumberField("version", 1);
            json.writeStringField("kind", report.kind());
            json.writeStringField("written", report.written());
            rows(json, report);
            json.writeArrayFieldStart("notes");
            for (String note : report.notes()) {
                json.writeString(note);
            }
            json.writeEndArray();
            sources(json, report);
            json.writeBooleanField("restsOnMemory", report.restsOnMemory());
            json.writeStringField("caution", report.caution());
            json.writeEndObject();
        });
    }

    private static void rows(JsonGenerator json, NumberReport report) throws IOException {
        json.writeArrayFieldStart("parts");
        for (Row row : report.rows()) {
            json.writeStartObject();
            json.writeStringField("position", row.position().strip());
            json.writeStringField("what", row.what());
            json.writeStringField("value", row.value());
            json.writeStringField("meaning", row.meaning());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void sources(JsonGenerator json, NumberReport report) throws IOException {
        json.writeArrayFieldStart("sources");
        for (Citation citation : report.sources()) {
            json.writeStartObject();
            json.writeStringField("document", citation.document());
            json.writeStringField("edition", citation.edition());
            json.writeStringField("certainty", citation.certainty().words());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
