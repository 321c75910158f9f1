package dev.gambrel.fuzzing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What holds of every cell that is written as CSV: a number, or text that no spreadsheet takes for a formula. */
final class CellsHold {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    private CellsHold() {}

    static void all(String csv) {
        FindingsHold.printable(csv);
        csv.lines().flatMap(line -> cells(line).stream()).forEach(CellsHold::one);
    }

    private static void one(String cell) {
        boolean leads = !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0;
        Holds.isTrue(!leads || NUMBER.matcher(cell).matches(), () -> "a formula: " + cell);
    }

    /** The cells of a line as a spreadsheet reads them: a quotation mark twice within a quoted one is one. */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int at = 0; at < line.length(); at++) {
            char c = line.charAt(at);
            boolean isTwice = c == '"' && quoted && at + 1 < line.length() && line.charAt(at + 1) == '"';
            if (c == '"' && !isTwice) {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
                at += isTwice ? 1 : 0;
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
