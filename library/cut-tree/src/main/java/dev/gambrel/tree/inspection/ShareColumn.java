package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** The shares of one cut as a column with the running total, for a note. */
public final class ShareColumn {
    private static final int MOST_ROWS = 40;

    private record Row(String name, String share, String total) {}

    private ShareColumn() {}

    /** Adds the column to a finding. */
    public static Diagnostic under(Diagnostic finding, Site site) {
        return finding.note(column(site.parts()));
    }

    private static String column(List<Part> parts) {
        List<Row> rows = rows(parts);
        int names = width(rows.stream().map(Row::name).toList());
        int shares = width(rows.stream().map(Row::share).toList());
        int totals = width(rows.stream().map(Row::total).toList());
        StringBuilder out = new StringBuilder();
        for (Row row : rows.subList(0, Math.min(rows.size(), MOST_ROWS))) {
            String line = row.name()
                    + " ".repeat(names - row.name().length() + 2)
                    + " ".repeat(shares - row.share().length())
                    + row.share()
                    + " ".repeat(totals - row.total().length() + 2)
                    + row.total();
            out.append(line.stripTrailing()).append('\n');
        }
        if (rows.size() > MOST_ROWS) {
            out.append("and ").append(rows.size() - MOST_ROWS).append(" more\n");
        }
        return out.substring(0, out.length() - 1);
    }

    private static List<Row> rows(List<Part> parts) {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("part", "share %", "running total %"));
        BigDecimal total = BigDecimal.ZERO;
        for (Part part : parts) {
            if (part.share() instanceof Share.Stated stated) {
                BigDecimal share = stated.expected().exactMean();
                total = total.add(share, MathContext.DECIMAL128);
                rows.add(new Row(part.name().text(), Findings.figure(share), Findings.figure(total)));
            } else {
                rows.add(new Row(part.name().text(), part instanceof Part.Rest ? "what is left" : "not stated", ""));
            }
        }
        return rows;
    }

    private static int width(List<String> cells) {
        return cells.stream().mapToInt(String::length).max().orElse(0);
    }
}
