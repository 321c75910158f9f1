package dev.gambrel.cli.number;

import dev.gambrel.cli.number.report.NumberReport;
import dev.gambrel.cli.number.report.NumberReport.Row;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.references.source.Citation;
import java.util.List;

/** The meaning of a number for people: a line for each part, then where it stands. */
final class NumberText {
    private static final int COLUMNS = 4;

    private final StringBuilder out = new StringBuilder();

    private NumberText() {}

    static String of(NumberReport report) {
        NumberText text = new NumberText();
        text.line(report.kind() + " " + report.written());
        text.line("");
        text.table(report.rows());
        report.notes().forEach(text::line);
        text.sources(report);
        if (!report.caution().isEmpty()) {
            text.line(report.caution());
        }
        return text.out.toString();
    }

    private void table(List<Row> rows) {
        int[] widths = new int[COLUMNS];
        for (Row row : rows) {
            for (int c = 0; c < COLUMNS; c++) {
                widths[c] = Math.max(widths[c], cells(row).get(c).length());
            }
        }
        for (Row row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < COLUMNS; c++) {
                String cell = cells(row).get(c);
                int gap = widths[c] == 0 ? 0 : widths[c] - cell.length() + 2;
                line.append(cell).append(" ".repeat(gap));
            }
            line(line.toString().stripTrailing());
        }
        line("");
    }

    private static List<String> cells(Row row) {
        return List.of(row.position(), row.what(), Visible.text(row.value()), row.meaning());
    }

    private void sources(NumberReport report) {
        line("Where it stands:");
        for (Citation citation : report.sources()) {
            line("  " + citation);
        }
        if (report.restsOnMemory()) {
            line("What is from memory must be looked up before anything rests on it.");
        }
    }

    private void line(String line) {
        out.append(Visible.text(line)).append('\n');
    }
}
