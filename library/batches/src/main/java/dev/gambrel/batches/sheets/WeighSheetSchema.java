package dev.gambrel.batches.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The published JSON Schema (draft 2020-12) of weigh sheets in JSON.
 *
 * <p>It says what is structurally right. {@link WeighSheet#read} asks more: no field twice, how much is read at all, and that what stands
 * in the fields is a sheet of the specification.
 */
public final class WeighSheetSchema {
    /** The schema's name. It is an identifier: nothing is fetched from there. */
    public static final String ID = "https://gambrel.dev/schema/weigh-sheet-1.schema.json";

    private static final String RESOURCE = "weigh-sheet-1.schema.json";

    private WeighSheetSchema() {}

    /**
     * The schema itself.
     *
     * @return JSON text
     * @throws UncheckedIOException if this library's own archive cannot be read
     */
    public static String text() {
        try (InputStream in = WeighSheetSchema.class.getResourceAsStream(RESOURCE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
