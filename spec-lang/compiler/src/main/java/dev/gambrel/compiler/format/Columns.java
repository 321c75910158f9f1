package dev.gambrel.compiler.format;

import java.util.List;

/** The columns of neighbouring lines: shares stand with their decimal points one below the other, and arrows do. */
final class Columns {
    private static final int GAP = 2;

    private final int shares;
    private final int arrows;
    private final int widestLead;
    private final int widestWhole;
    private final int widestBeforeArrow;

    Columns(List<Row> rows) {
        List<Row> withShare =
                rows.stream().filter(row -> !row.share().isEmpty()).toList();
        shares = withShare.size();
        widestLead =
                withShare.stream().mapToInt(row -> Row.width(row.lead())).max().orElse(0);
        widestWhole = withShare.stream().mapToInt(Row::whole).max().orElse(0);
        List<Row> withArrow =
                rows.stream().filter(row -> !row.arrow().isEmpty()).toList();
        arrows = withArrow.size();
        widestBeforeArrow = withArrow.stream()
                .mapToInt(row -> Row.width(beforeArrow(row)))
                .max()
                .orElse(0);
    }

    String lay(Row row) {
        if (row.lead().isEmpty()) {
            return row.plain();
        }
        String before = beforeArrow(row);
        return row.arrow().isEmpty()
                ? before
                : before + gap(arrows, widestBeforeArrow - Row.width(before)) + row.arrow();
    }

    private String beforeArrow(Row row) {
        if (row.share().isEmpty()) {
            return row.lead();
        }
        int lacking = widestLead - Row.width(row.lead()) + widestWhole - row.whole();
        return row.lead() + gap(shares, lacking) + row.share();
    }

    /** What stands alone in its column follows after one space. */
    private static String gap(int inColumn, int lacking) {
        return " ".repeat(inColumn == 1 ? 1 : GAP + lacking);
    }
}
