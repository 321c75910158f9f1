package dev.gambrel.cli.number.report;

import dev.gambrel.references.source.Citation;
import java.util.List;

/**
 * What a number means.
 *
 * @param kind what kind of number it is
 * @param written the number
 * @param rows its parts, in their order
 * @param notes what must be known to read them
 * @param sources where the meanings stand, each once
 * @param caution what to take care of; empty if nothing
 */
public record NumberReport(
        String kind, String written, List<Row> rows, List<String> notes, List<Citation> sources, String caution) {
    /**
     * One part.
     *
     * @param position where it stands, or what it is called on the label
     * @param what what it tells
     * @param value as written
     * @param meaning in words
     */
    public record Row(String position, String what, String value, String meaning) {}

    /** Copies the lists; a source is named once. */
    public NumberReport {
        rows = List.copyOf(rows);
        notes = notes.stream().distinct().toList();
        sources = sources.stream().distinct().toList();
    }

    /**
     * Whether something of it must be looked up first.
     *
     * @return true if a source is from memory
     */
    public boolean restsOnMemory() {
        return sources.stream().anyMatch(Citation::isFromMemory);
    }
}
