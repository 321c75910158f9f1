package dev.gambrel.cli.carcasses;

import dev.gambrel.batches.Progress;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;

/** One line on a terminal that says how far a file is read: it is written over as it changes, and cleared at the end. */
final class ProgressLine extends FilterInputStream implements Progress {
    private static final int CELLS = 30;

    private final PrintStream to;
    private final long size;
    private long read;
    private int shown = -1;

    /**
     * A line that says nothing yet.
     *
     * @param in the file, of which the bytes are counted
     * @param size its size in bytes
     * @param to the terminal
     */
    ProgressLine(InputStream in, long size, PrintStream to) {
        super(in);
        this.size = Math.max(1, size);
        this.to = to;
    }

    @Override
    public int read() throws IOException {
        int one = super.read();
        read += one < 0 ? 0 : 1;
        return one;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        int count = super.read(into, from, length);
        read += Math.max(0, count);
        return count;
    }

    @Override
    public void rows(long rows) {
        int percent = (int) Math.min(100, read * 100 / size);
        if (percent != shown) {
            shown = percent;
            int done = percent * CELLS / 100;
            to.print("\r[" + "#".repeat(done) + ".".repeat(CELLS - done) + "] " + percent + " %, " + rows
                    + " carcasses");
            to.flush();
        }
    }

    void clear() {
        if (shown >= 0) {
            to.print("\r" + " ".repeat(CELLS + 40) + "\r");
            to.flush();
        }
    }
}
