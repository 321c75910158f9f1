package dev.gambrel.yields.table;

import java.util.ArrayList;
import java.util.List;

/** Cells set in columns, two spaces apart: the first and last column to the left, figures between them to the right. */
final class TextGrid {
    private final List<List<String>> rows = new ArrayList<>();

    void add(String... cells) {
        rows.add(List.of(cells));
    }

    void print(StringBuilder out) {
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int c = 0; c < widths.length; c++) {
                widths[c] = Math.max(widths[c], width(row.get(c)));
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < widths.length; c++) {
                String gap = " ".repeat(widths[c] - width(row.get(c)));
                boolean left = c == 0 || c == widths.length - 1;
                line.append(c == 0 ? "" : "  ").append(left ? row.get(c) + gap : gap + row.get(c));
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
