package dev.gambrel.cli.origin.report;

import java.util.List;

/**
 * The values that are stated of one thing.
 *
 * @param heading what they are of: "leg / topside", "streams"
 * @param values where each comes from
 */
public record OriginSection(String heading, List<StatedValue> values) {
    /** Copies the list. */
    public OriginSection {
        values = List.copyOf(values);
    }
}
