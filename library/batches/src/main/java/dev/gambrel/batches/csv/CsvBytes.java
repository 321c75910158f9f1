package dev.gambrel.batches.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.stream.LongStream;

/**
 * Comma-separated values as UTF-8 (RFC 4180, lines ended by LF), put together without making objects. Text that a spreadsheet would
 * take for a formula is given a leading apostrophe, and control characters and those that turn the direction of
 * reading come out as U+FFFD.
 */
public final class CsvBytes {
    /** What begins a formula, the wide forms of these signs among them. */
    private static final String BEGINS_FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private static final int NOT_A_CHARACTER = 0xFFFD;
    private static final int MOST_DIGITS = 20;
    private static final long[] LONGS =
            LongStream.iterate(1, power -> power * 10).limit(19).toArray();
    private static final int[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

    private byte[] bytes = new byte[1 << 12];
    private int length;
    private boolean isInLine;

    /** Takes everything out. */
    public void clear() {
        length = 0;
        isInLine = false;
    }

    /** How many bytes there are. */
    public int length() {
        return length;
    }

    /** Writes all that there is. */
    public void writeTo(OutputStream out) throws IOException {
        out.write(bytes, 0, length);
    }

    private void room(int more) {
        if (length + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(length + more, 2 * bytes.length));
        }
    }

    private void gap() {
        if (isInLine) {
            room(1);
            bytes[length++] = ',';
        }
        isInLine = true;
    }

    /** Ends the line. */
    public void endLine() {
        room(1);
        bytes[length++] = '\n';
        isInLine = false;
    }

    /** Adds a cell without anything in it. */
    public void empty() {
        gap();
    }

    /** Adds a whole number from 0 up. */
    public void number(long value) {
        gap();
        digits(value, 1);
    }

    /** A figure with so many places after the point, rounded to the nearest, to the even one of two. */
    public void figure(double value, int decimals) {
        gap();
        double steps = Math.rint(Math.abs(value) * POWERS[decimals]);
        long all = (long) steps;
        room(MOST_DIGITS + 2);
        if (value < 0 && all > 0) {
            bytes[length++] = '-';
        }
        if (decimals == 0) {
            digits(all, 1);
            return;
        }
        digits(all, decimals + 1);
        int point = length - decimals;
        System.arraycopy(bytes, point, bytes, point + 1, decimals);
        bytes[point] = '.';
        length++;
    }

    private void digits(long value, int least) {
        room(MOST_DIGITS);
        int count = least;
        while (count < LONGS.length && value >= LONGS[count]) {
            count++;
        }
        long left = value;
        for (int i = length + count - 1; i >= length; i--) {
            long tenth = left / 10;
            bytes[i] = (byte) ('0' + (left - tenth * 10));
            left = tenth;
        }
        length += count;
    }

    /** Adds a word of somebody else's. */
    public void word(String word) {
        char[] text = word.toCharArray();
        word(text, 0, text.length);
    }

    /** A word of somebody else's. */
    public void word(char[] text, int from, int to) {
        gap();
        boolean isQuoted = false;
        for (int i = from; i < to && !isQuoted; i++) {
            isQuoted = text[i] == ',' || text[i] == '"' || text[i] == ';';
        }
        room(3 * (to - from) * 2 + 3);
        if (isQuoted) {
            bytes[length++] = '"';
        }
        if (from < to && BEGINS_FORMULA.indexOf(text[from]) >= 0) {
            bytes[length++] = '\'';
        }
        for (int i = from; i < to; i++) {
            int c = text[i];
            if (Character.isHighSurrogate(text[i]) && i + 1 < to && Character.isLowSurrogate(text[i + 1])) {
                c = Character.toCodePoint(text[i], text[++i]);
            }
            character(c);
        }
        if (isQuoted) {
            bytes[length++] = '"';
        }
    }

    /** Control characters, those that turn the direction of reading, and halves of a character are none. */
    private static boolean isText(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE -> false;
            default -> true;
        };
    }

    private void character(int written) {
        int c = isText(written) ? written : NOT_A_CHARACTER;
        if (c == '"') {
            bytes[length++] = '"';
        }
        if (c < 0x80) {
            bytes[length++] = (byte) c;
        } else if (c < 0x800) {
            bytes[length++] = (byte) (0xC0 | c >> 6);
            bytes[length++] = (byte) (0x80 | c & 0x3F);
        } else if (c < 0x10000) {
            bytes[length++] = (byte) (0xE0 | c >> 12);
            bytes[length++] = (byte) (0x80 | c >> 6 & 0x3F);
            bytes[length++] = (byte) (0x80 | c & 0x3F);
        } else {
            bytes[length++] = (byte) (0xF0 | c >> 18);
            bytes[length++] = (byte) (0x80 | c >> 12 & 0x3F);
            bytes[length++] = (byte) (0x80 | c >> 6 & 0x3F);
            bytes[length++] = (byte) (0x80 | c & 0x3F);
        }
    }
}
