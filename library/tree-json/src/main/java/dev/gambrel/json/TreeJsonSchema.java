package dev.gambrel.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The published JSON Schema (draft 2020-12) of the JSON that {@link TreeJsonWriter} writes.
 *
 * <p>It says what is structurally right. {@link TreeJsonReader} asks more: no field twice, sizes of numbers, how much is
 * read at all, and the rules of the tree.
 */
public final class TreeJsonSchema {
    /** The schema's name. It is an identifier: nothing is fetched from there. */
    public static final String ID = "https://gambrel.dev/schema/cut-tree-1.schema.json";

    private static final String RESOURCE = "cut-tree-1.schema.json";

    private TreeJsonSchema() {}

    /**
     * The schema itself.
     *
     * @return JSON text
     * @throws UncheckedIOException if this library's own archive cannot be read
     */
    public static String text() {
        try (InputStream in = TreeJsonSchema.class.getResourceAsStream(RESOURCE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
