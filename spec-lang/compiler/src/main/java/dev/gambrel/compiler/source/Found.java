package dev.gambrel.compiler.source;

import dev.gambrel.text.SourceText;

/** The answer to a {@code use} line. */
public sealed interface Found {
    /**
     * The text.
     *
     * @param text its name is the same however the file was asked for
     */
    record Text(SourceText text) implements Found {}

    /**
     * No text, and why.
     *
     * @param code the kind of finding
     * @param count how large or how many, where the kind speaks of it; 0 otherwise
     */
    record Refused(FileCode code, long count) implements Found {}
}
