package dev.gambrel.yields.table;

import java.util.List;

/**
 * Comma-separated values (RFC 4180, lines ended by LF). Text that a spreadsheet would take for a formula is given a leading
 * apostrophe, and what another country's spreadsheet would take for the end of a cell stands in quotation marks. Not thread-safe.
 */
public final class Csv {
    /** What begins a formula, the wide forms of these signs among them. */
    private static final String BEGINS_FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private static final String ENDS_CELL = ",;\t\"\n\r";

    private final StringBuilder out = new StringBuilder();

    /** Nothing yet. */
    public Csv() {}

    /**
     * Adds a line: words first, then figures of our own making, which may begin with a minus.
     *
     * @param words cells that may hold anything
     * @param figures cells that follow them and are taken as they are
     */
    public void add(List<String> words, List<String> figures) {
        String gap = "";
        for (String word : words) {
            out.append(gap).append(quoted(harmless(word)));
            gap = ",";
        }
        for (String figure : figures) {
            out.append(gap).append(quoted(figure));
            gap = ",";
        }
        out.append('\n');
    }

    static String harmless(String text) {
        return !text.isEmpty() && BEGINS_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> ENDS_CELL.indexOf(c) >= 0);
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
