package dev.gambrel.batches.csv;

import java.util.Arrays;

/** Some rows of the file, with what comes of them. Used again for others; in the hands of one thread at a time. */
public final class Chunk {
    private static final int USUAL_ROW = 64;

    private final int mostCharacters;
    private final int together;
    private final int usualCharacters;
    private final long[] lines;
    private final int[] ends;
    private final boolean[] tooLong;
    private char[] text;
    private int length;
    private int rows;
    private boolean isCut;

    /**
     * Room for so many rows of at most so many characters. Where rows are long it is full with fewer, of which so many stay
     * together: memory follows the usual row and not the longest.
     */
    public Chunk(int rows, int together, int mostCharacters) {
        this.mostCharacters = mostCharacters;
        this.together = together;
        this.usualCharacters = rows * Math.min(USUAL_ROW, mostCharacters);
        this.lines = new long[rows];
        this.ends = new int[rows];
        this.tooLong = new boolean[rows];
        this.text = new char[usualCharacters];
    }

    /** Takes all rows out. */
    public void clear() {
        rows = 0;
        length = 0;
        isCut = false;
    }

    /** Whether there is room for no other row. */
    public boolean isFull() {
        return rows == lines.length || rows > 0 && rows % together == 0 && length >= usualCharacters;
    }

    /** Whether a row is begun. */
    public boolean hasOpenRow() {
        return length > begin(rows);
    }

    /** Adds to the row that is begun, or begins one; what is more than a row may have is dropped and noted. */
    public void append(char[] from, int at, int count) {
        int room = mostCharacters - (length - begin(rows));
        int taken = Math.min(count, room);
        isCut |= count > room;
        if (length + taken > text.length) {
            text = Arrays.copyOf(text, Math.max(length + taken, text.length * 2));
        }
        System.arraycopy(from, at, text, length, taken);
        length += taken;
    }

    /** Ends the row that is begun, which ended on this line of the file. */
    public void endRow(long line) {
        lines[rows] = line;
        ends[rows] = length;
        tooLong[rows] = isCut;
        isCut = false;
        rows++;
    }

    /** How many rows there are. */
    public int rows() {
        return rows;
    }

    /** The characters of all rows. */
    public char[] text() {
        return text;
    }

    /** Where a row begins. */
    public int begin(int row) {
        return row == 0 ? 0 : ends[row - 1];
    }

    /** Where a row ends. */
    public int end(int row) {
        return ends[row];
    }

    /** On which line of the file a row stands. */
    public long line(int row) {
        return lines[row];
    }

    /** Whether something of a row was dropped. */
    public boolean isTooLong(int row) {
        return tooLong[row];
    }
}
