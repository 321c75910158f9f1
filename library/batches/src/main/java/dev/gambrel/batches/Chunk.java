package dev.gambrel.batches;

import java.util.Arrays;

/** Some rows of the file, with what comes of them. Used again for others; in the hands of one thread at a time. */
final class Chunk {
    private static final int USUAL_ROW = 64;

    private final int mostCharacters;
    private final long[] lines;
    private final int[] ends;
    private final boolean[] tooLong;
    private char[] text;
    private int length;
    private int rows;
    private boolean isCut;

    Chunk(int rows, int mostCharacters) {
        this.mostCharacters = mostCharacters;
        this.lines = new long[rows];
        this.ends = new int[rows];
        this.tooLong = new boolean[rows];
        this.text = new char[rows * Math.min(USUAL_ROW, mostCharacters)];
    }

    void clear() {
        rows = 0;
        length = 0;
        isCut = false;
    }

    boolean isFull() {
        return rows == lines.length;
    }

    boolean hasOpenRow() {
        return length > begin(rows);
    }

    void append(char[] from, int at, int count) {
        int room = mostCharacters - (length - begin(rows));
        int taken = Math.min(count, room);
        isCut |= count > room;
        if (length + taken > text.length) {
            text = Arrays.copyOf(text, Math.max(length + taken, text.length * 2));
        }
        System.arraycopy(from, at, text, length, taken);
        length += taken;
    }

    void endRow(long line) {
        lines[rows] = line;
        ends[rows] = length;
        tooLong[rows] = isCut;
        isCut = false;
        rows++;
    }

    int rows() {
        return rows;
    }

    char[] text() {
        return text;
    }

    int begin(int row) {
        return row == 0 ? 0 : ends[row - 1];
    }

    int end(int row) {
        return ends[row];
    }

    long line(int row) {
        return lines[row];
    }

    boolean isTooLong(int row) {
        return tooLong[row];
    }
}
