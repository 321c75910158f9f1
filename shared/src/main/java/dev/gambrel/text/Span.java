package dev.gambrel.text;

/**
 * A half-open range of UTF-16 offsets in one {@link SourceText}.
 *
 * @param start offset of the first character, at least 0
 * @param end offset just past the last character, at least {@code start}
 */
public record Span(int start, int end) {
    /**
     * Checks the order of the two ends.
     *
     * @throws IllegalArgumentException if {@code start} is negative or after {@code end}
     */
    public Span {
        if (start < 0 || end < start) {
            throw new IllegalArgumentException("not a span: " + start + " to " + end);
        }
    }

    /**
     * The number of UTF-16 characters covered.
     *
     * @return the length, 0 for a bare position
     */
    public int length() {
        return end - start;
    }

    /**
     * The smallest span that holds both.
     *
     * @param other another span of the same text
     * @return from the earlier start to the later end
     */
    public Span cover(Span other) {
        return new Span(Math.min(start, other.start), Math.max(end, other.end));
    }
}
