package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.cli.origin.report.OriginSection;
import dev.gambrel.cli.origin.report.StatedValue;
import dev.gambrel.compiler.origin.Origin;
import dev.gambrel.tree.Source;
import java.io.IOException;
import java.util.List;

/** Where values come from, as JSON. Offsets count UTF-16 characters from 0; lines and columns count from 1. */
public final class OriginJson {
    private OriginJson() {}

    /**
     * Writes sections.
     *
     * @param sections in the order in which they shall stand
     * @return a JSON object, ended by a line feed
     */
    public static String write(List<OriginSection> sections) {
        return Canonical.text(json -> {
            json.writeStartObject();
            json.writeStringField("format", "gambrel origins");
            json.writeNumberField("version", 1);
            json.writeArrayFieldStart("sections");
            for (OriginSection section : sections) {
                json.writeStartObject();
                json.writeStringField("of", section.heading());
                json.writeArrayFieldStart("values");
                for (StatedValue value : section.values()) {
                    json.writeStartObject();
                    json.writeStringField("what", value.what());
                    origin(json, value.origin());
                    json.writeEndObject();
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static void origin(JsonGenerator json, Origin origin) throws IOException {
        json.writeStringField("words", origin.words());
        json.writeStringField("file", origin.file());
        json.writeBooleanField("catalogue", origin.isFromCatalogue());
        json.writeNumberField("start", origin.place().span().start());
        json.writeNumberField("end", origin.place().span().end());
        json.writeNumberField("line", origin.position().line());
        json.writeNumberField("column", origin.position().column());
        json.writeStringField("text", origin.line());
        json.writeArrayFieldStart("sources");
        for (Source source : origin.sources()) {
            json.writeStartObject();
            json.writeStringField("name", source.name().text());
            json.writeStringField("kind", source.kind().words());
            json.writeStringField("citation", source.citation());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("revised");
        for (Origin earlier : origin.revised()) {
            json.writeStartObject();
            origin(json, earlier);
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
