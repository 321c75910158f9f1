package dev.gambrel.batches.csv;

import java.io.IOException;
import java.io.Reader;

/**
 * Splits text into rows, one to a line, however long a line is: of one that is too long the beginning is kept. Lines end with LF,
 * CR LF or CR; empty ones are passed over.
 */
public final class RowLines {
    private static final int BUFFER = 1 << 16;

    private final Reader in;
    private final char[] buffer = new char[BUFFER];
    private int at;
    private int end;
    private long line;
    private boolean isAfterReturn;

    /** Rows of a text that is read from its beginning. */
    public RowLines(Reader in) {
        this.in = in;
    }

    /** Adds rows until the chunk is full or nothing is left; false if nothing is. */
    public boolean fill(Chunk chunk) throws IOException {
        while (!chunk.isFull()) {
            if (!addRow(chunk)) {
                return false;
            }
        }
        return true;
    }

    private boolean addRow(Chunk chunk) throws IOException {
        while (true) {
            boolean isEnd = !readLine(chunk);
            if (chunk.hasOpenRow()) {
                chunk.endRow(line);
                return !isEnd;
            } else if (isEnd) {
                return false;
            }
        }
    }

    /** Puts the next line into the open row; false if the text ends with it. */
    private boolean readLine(Chunk chunk) throws IOException {
        line++;
        while (true) {
            if (at == end && !refill()) {
                return false;
            }
            int from = at;
            if (isAfterReturn && buffer[at] == '\n') {
                from++;
            }
            isAfterReturn = false;
            int to = from;
            while (to < end && buffer[to] != '\n' && buffer[to] != '\r') {
                to++;
            }
            chunk.append(buffer, from, to - from);
            at = to;
            if (to < end) {
                isAfterReturn = buffer[to] == '\r';
                at++;
                return true;
            }
        }
    }

    private boolean refill() throws IOException {
        at = 0;
        end = Math.max(0, in.read(buffer, 0, BUFFER));
        return end > 0;
    }
}
