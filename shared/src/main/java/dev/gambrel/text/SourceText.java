package dev.gambrel.text;

import java.util.Arrays;
import java.util.Objects;

/**
 * A named text and where its lines begin. Immutable; finding a line costs O(log lines).
 *
 * <p>Lines end with LF, CR LF or CR. Two source texts are equal when name and text are.
 */
public final class SourceText {
    private final String name;
    private final String text;
    private final int[] lineStarts;

    /**
     * Holds a text under the name that messages will show.
     *
     * @param name how people call it, usually a relative file name
     * @param text the whole text
     */
    public SourceText(String name, String text) {
        this.name = Objects.requireNonNull(name);
        this.text = Objects.requireNonNull(text);
        this.lineStarts = findLines(text);
    }

    /**
     * The name that messages show.
     *
     * @return the name given
     */
    public String name() {
        return name;
    }

    /**
     * The whole text.
     *
     * @return the text given
     */
    public String text() {
        return text;
    }

    /**
     * The characters under a span.
     *
     * @param span a span of this text
     * @return the characters
     * @throws IndexOutOfBoundsException if the span reaches past the end
     */
    public String slice(Span span) {
        return text.substring(span.start(), span.end());
    }

    /**
     * How many lines there are; an empty text has one.
     *
     * @return the count, at least 1
     */
    public int lineCount() {
        return lineStarts.length;
    }

    /**
     * Where an offset is, for people.
     *
     * @param offset a UTF-16 offset from 0 to the length of the text, inclusive
     * @return line and column, both counted from 1
     * @throws IndexOutOfBoundsException if the offset lies outside the text
     */
    public Position position(int offset) {
        Objects.checkIndex(offset, text.length() + 1);
        int found = Arrays.binarySearch(lineStarts, offset);
        int line = found >= 0 ? found : -found - 2;
        return new Position(line + 1, offset - lineStarts[line] + 1);
    }

    /**
     * The characters of one line without its line end.
     *
     * @param line counted from 1
     * @return the line's span
     * @throws IndexOutOfBoundsException if there is no such line
     */
    public Span line(int line) {
        Objects.checkIndex(line - 1, lineStarts.length);
        int start = lineStarts[line - 1];
        int end = line < lineStarts.length ? lineStarts[line] : text.length();
        while (end > start && isLineEnd(text.charAt(end - 1))) {
            end--;
        }
        return new Span(start, end);
    }

    private static boolean isLineEnd(char c) {
        return c == '\n' || c == '\r';
    }

    private static int[] findLines(String text) {
        int[] starts = new int[16];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean crLf = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if (isLineEnd(c) && !crLf) {
                if (count == starts.length) {
                    starts = Arrays.copyOf(starts, count * 2);
                }
                starts[count++] = i + 1;
            }
        }
        return Arrays.copyOf(starts, count);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SourceText that && name.equals(that.name) && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
