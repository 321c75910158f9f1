package dev.gambrel.batches.csv;

import java.util.Arrays;

/**
 * The cells of one row (RFC 4180): cells apart by a separator, those in quotation marks with whatever in them but the end of the
 * row, a quotation mark doubled.
 */
public final class Cells {
    private static final char QUOTE = '"';

    private final char separator;
    private final int[] begins;
    private final int[] ends;
    private char[] text = new char[0];
    private char[] unquoted = new char[0];
    private int unquotedLength;
    private int count;

    /** Cells of rows that have at most so many; more are counted and not kept. */
    public Cells(char separator, int most) {
        this.separator = separator;
        this.begins = new int[most];
        this.ends = new int[most];
    }

    /** Splits a row; false if its quotation marks do not fit. Cells beyond the most are counted and not kept. */
    public boolean split(char[] row, int from, int to) {
        text = row;
        count = 0;
        unquotedLength = 0;
        int at = from;
        while (true) {
            boolean isQuoted = at < to && row[at] == QUOTE;
            int end = isQuoted ? quoted(at + 1, to) : plain(at, to);
            if (end < 0) {
                return false;
            }
            if (end == to) {
                return true;
            }
            at = end + 1;
        }
    }

    private int plain(int from, int to) {
        int end = from;
        while (end < to && text[end] != separator) {
            if (text[end] == QUOTE) {
                return -1;
            }
            end++;
        }
        put(from, end);
        return end;
    }

    /** Where a cell ends whose first quotation mark stands before; -1 if it does not end well. */
    private int quoted(int from, int to) {
        int begin = unquotedLength;
        boolean isPlain = true;
        int at = from;
        while (at < to) {
            if (text[at] == QUOTE) {
                if (at + 1 == to || text[at + 1] != QUOTE) {
                    break;
                }
                if (isPlain) {
                    copy(from, at);
                }
                isPlain = false;
                at++;
            }
            if (!isPlain) {
                copy(at, at + 1);
            }
            at++;
        }
        boolean isClosed = at < to && (at + 1 == to || text[at + 1] == separator);
        if (!isClosed) {
            return -1;
        } else if (isPlain) {
            put(from, at);
        } else {
            put(-begin - 1, -unquotedLength - 1);
        }
        return at + 1;
    }

    private void copy(int from, int to) {
        int needed = unquotedLength + to - from;
        if (needed > unquoted.length) {
            unquoted = Arrays.copyOf(unquoted, Math.max(64, 2 * needed));
        }
        System.arraycopy(text, from, unquoted, unquotedLength, to - from);
        unquotedLength = needed;
    }

    /** Cells that had a quotation mark in them stand elsewhere, which negative places tell. */
    private void put(int begin, int end) {
        if (count < begins.length) {
            begins[count] = begin;
            ends[count] = end;
        }
        count++;
    }

    /** How many cells the row that was split last has. */
    public int count() {
        return count;
    }

    /** The characters among which a cell stands. */
    public char[] text(int cell) {
        return begins[cell] < 0 ? unquoted : text;
    }

    /** Where a cell begins. */
    public int begin(int cell) {
        return begins[cell] < 0 ? -begins[cell] - 1 : begins[cell];
    }

    /** Where a cell ends. */
    public int end(int cell) {
        return begins[cell] < 0 ? -ends[cell] - 1 : ends[cell];
    }

    /** A cell as text. */
    public String string(int cell) {
        return new String(text(cell), begin(cell), end(cell) - begin(cell));
    }
}
