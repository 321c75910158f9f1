package dev.gambrel.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/** Rows under one another: the first column to the left, all others to the right. */
public final class Grid {
    private static final String GAP = "  ";

    private final List<List<String>> rows = new ArrayList<>();

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
                line.append(c == 0 ? "" : GAP).append(c == 0 ? row.get(c) + blanks : blanks + row.get(c));
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
        return out.toString();
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
