package dev.gambrel.yields.conformance.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Cells side by side, two spaces apart, each broken between words at its width; a word that is longer is broken anywhere.
 *
 * @param widths in characters
 */
record Columns(List<Integer> widths) {
    void print(List<String> cells, StringBuilder out) {
        List<List<String>> columns = new ArrayList<>(cells.size());
        for (int i = 0; i < cells.size(); i++) {
            columns.add(broken(cells.get(i), widths.get(i)));
        }
        int height = columns.stream().mapToInt(List::size).max().orElse(0);
        for (int row = 0; row < height; row++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns.size(); i++) {
                String cell = row < columns.get(i).size() ? columns.get(i).get(row) : "";
                line.append(i == 0 ? "" : "  ").append(cell).append(" ".repeat(widths.get(i) - length(cell)));
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
    }

    private static List<String> broken(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String rest = word;
            if (!line.isEmpty() && length(line) + 1 + length(rest) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (length(rest) > width) {
                int end = rest.offsetByCodePoints(0, width);
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    private static int length(CharSequence text) {
        return Character.codePointCount(text, 0, text.length());
    }
}
