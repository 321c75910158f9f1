package dev.gambrel.cli.shares;

import java.util.ArrayList;
import java.util.List;

/** Rows under one another: names and remarks, the first and the last column, to the left, figures to the right. */
final class Rows {
    private static final String GAP = "  ";

    private final List<List<String>> rows = new ArrayList<>();

    Rows row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    String text() {
        int last = rows.get(0).size() - 1;
        StringBuilder out = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c <= last; c++) {
                String blanks = " ".repeat(width(c) - length(row.get(c)));
                boolean isWords = c == 0 || c == last;
                line.append(c == 0 ? "" : GAP).append(isWords ? row.get(c) + blanks : blanks + row.get(c));
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
        return out.toString();
    }

    private int width(int column) {
        return rows.stream().mapToInt(row -> length(row.get(column))).max().orElse(0);
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
