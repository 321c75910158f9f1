package dev.gambrel.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/** Rows under one another: the first column to the left, all others to the right. */
public final class Grid {
    private static final String GAP = "  ";

    private final boolean hasRemarks;
    private final List<List<String>> rows = new ArrayList<>();

    private Grid(boolean hasRemarks) {
        this.hasRemarks = hasRemarks;
    }

    /** A name, then figures. */
    public Grid() {
        this(false);
    }

    /**
     * A name, figures, and a remark to the left in the last column.
     *
     * @return the table, without a row yet
     */
    public static Grid withRemarks() {
        return new Grid(true);
    }

    /**
     * Adds a row.
     *
     * @param cells as many as the first row has
     * @return this
     */
    public Grid row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    /**
     * Whether there is no row yet.
     *
     * @return true before the first
     */
    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /**
     * The table.
     *
     * @return its rows, each ended by a line feed
     */
    public String text() {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int c = 0; c < columns; c++) {
                widths[c] = Math.max(widths[c], length(row.get(c)));
            }
        }
        StringBuilder out = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < columns; c++) {
                String blanks = " ".repeat(widths[c] - length(row.get(c)));
                boolean isWords = c == 0 || hasRemarks && c == columns - 1;
                line.append(c == 0 ? "" : GAP).append(isWords ? row.get(c) + blanks : blanks + row.get(c));
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
        return out.toString();
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
