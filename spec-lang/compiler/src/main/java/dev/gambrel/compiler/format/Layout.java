package dev.gambrel.compiler.format;

import dev.gambrel.compiler.parse.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Words laid out as a text. */
final class Layout {
    private Layout() {}

    static String of(List<Word> words) {
        List<Line> lines = LineDivider.divide(words);
        List<Row> rows = lines.stream().map(Row::of).toList();
        Map<Integer, Columns> columns = columns(lines, rows);
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            out.append(" ".repeat(line.indent()))
                    .append(columns.get(line.neighbours()).lay(rows.get(i)))
                    .append('\n');
        }
        return out.toString();
    }

    private static Map<Integer, Columns> columns(List<Line> lines, List<Row> rows) {
        Map<Integer, List<Row>> neighbours = new HashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            neighbours
                    .computeIfAbsent(lines.get(i).neighbours(), group -> new ArrayList<>())
                    .add(rows.get(i));
        }
        return neighbours.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> new Columns(entry.getValue())));
    }
}
