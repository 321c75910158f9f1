package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** JSON with the same bytes everywhere: two blanks to a level, LF, fields in a fixed order. */
final class Canonical {
    private Canonical() {}

    /** Writes one value. */
    interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    static String text(Body body) {
        StringWriter out = new StringWriter();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentArraysWith(indenter);
        printer.indentObjectsWith(indenter);
        JsonFactory factory = JsonFactory.builder()
                .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
                .build();
        try (JsonGenerator json = factory.createGenerator(out)) {
            json.setPrettyPrinter(printer);
            body.write(json);
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
        return out.append('\n').toString();
    }
}
