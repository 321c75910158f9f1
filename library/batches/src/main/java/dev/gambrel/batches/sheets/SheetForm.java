package dev.gambrel.batches.sheets;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.SourceText;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** The form that a sheet is written in. Both say the same in rows: a heading, the columns, the parts. */
enum SheetForm {
    /** Rows of cells. */
    CSV,
    /** One object. */
    JSON;

    private static final String ENDING = ".json";

    /** By the ending of the file's name; and no row of cells begins with a bracket. */
    static SheetForm of(SourceText text) {
        String begin = text.text().stripLeading();
        boolean isJson =
                text.name().toLowerCase(Locale.ROOT).endsWith(ENDING) || begin.startsWith("{") || begin.startsWith("[");
        return isJson ? JSON : CSV;
    }

    /** What it says; nothing, and why, where it has not its form. */
    Optional<List<SheetRow>> rows(SourceText text, Consumer<Diagnostic> findings) {
        return this == JSON ? SheetJson.rows(text, findings) : Optional.of(SheetRow.of(text, findings));
    }

    /** How to say something that the heading lacks. */
    String toAdd(HeadingLine line) {
        return this == JSON ? "Write: " + line.json() : "Write above the table: " + line.example();
    }

    /** How to begin the table. */
    String toBeginTable() {
        return this == JSON
                ? "Write: \"parts\": [{\"part\": \"leg\", \"pieces\": \"pair\", \"gross\": 7.460, \"tare\": 0, \"unit\":"
                        + " \"kg\"}]"
                : "Write under the heading: part,pieces,gross,tare,unit";
    }
}
