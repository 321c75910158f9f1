package dev.gambrel.compiler.source;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.limits.Limits;
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
    record Refused(FileCode code, long count) implements Found {
        /**
         * The finding for whoever asked for the file by its name.
         *
         * @param file the name
         * @param limits how large it might have been
         * @return the finding, with what to do
         */
        public Diagnostic finding(String file, Limits limits) {
            Diagnostic finding = Diagnostic.of(code, new Place.InFile(file))
                    .with("file", file)
                    .with("found", count)
                    .with("allowed", limits.textBytes());
            return switch (code) {
                case MISSING -> finding.help("Look at how the name is written, and which folder you are in.");
                case NOT_TEXT -> finding.help("Save it as plain text in UTF-8.");
                case TOO_LARGE -> finding.help("A specification is text; look whether this is the right file.");
                default -> finding.help("Look whether it is a file, and who may read it.");
            };
        }
    }
}
