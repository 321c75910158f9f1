package dev.gambrel.cli.blend;

import java.util.ArrayList;
import java.util.List;

/** Cells set in columns, two spaces apart: the first to the left, figures to the right. */
final class Columns {
    private final List<List<String>> rows = new ArrayList<>();

    Columns(String... head) {
        add(head);
    }

    void add(String... cells) {
        rows.add(List.of(cells));
    }

    String text() {
        StringBuilder out = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < row.size(); c++) {
                String gap = " ".repeat(widest(c) - width(row.get(c)));
                line.append(c == 0 ? row.get(c) + gap : "  " + gap + row.get(c));
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
        return out.toString();
    }

    private int widest(int column) {
        return rows.stream().mapToInt(row -> width(row.get(column))).max().orElse(0);
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
