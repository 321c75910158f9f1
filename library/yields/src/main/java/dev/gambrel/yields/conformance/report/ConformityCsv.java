package dev.gambrel.yields.conformance.report;

import dev.gambrel.yields.conformance.report.ConformitySheet.Line;
import dev.gambrel.yields.conformance.report.ConformitySheet.Product;
import dev.gambrel.yields.conformance.report.ConformitySheet.Told;
import dev.gambrel.yields.table.Csv;
import java.util.List;

/** A sheet as comma-separated values: a row for each clause, and one for whatever stands in the way of an answer. */
public final class ConformityCsv {
    private static final List<String> HEADING = List.of(
            "asked for",
            "matched to",
            "about",
            "verdict",
            "asked",
            "house",
            "margin",
            "expected",
            "code",
            "why",
            "buyer's text",
            "house's text");

    private ConformityCsv() {}

    /**
     * Sets a sheet in rows.
     *
     * @param sheet the sheet
     * @return rows, the heading first, each ended by a line feed; no cell is taken for a formula
     */
    public static String of(ConformitySheet sheet) {
        Csv csv = new Csv();
        csv.add(HEADING, List.of());
        for (Product product : sheet.products()) {
            product.findings().forEach(finding -> csv.add(finding(product, finding), List.of()));
            product.lines().forEach(line -> csv.add(clause(product, line), List.of()));
        }
        return csv.toString();
    }

    private static List<String> clause(Product product, Line line) {
        return List.of(
                product.asked(),
                product.matched(),
                line.about(),
                line.verdict().words(),
                line.asked(),
                line.held(),
                line.margin(),
                String.join(" ", line.expected()),
                line.why().code(),
                line.why().sentence(),
                line.why().buyer(),
                String.join("; ", line.why().house()));
    }

    private static List<String> finding(Product product, Told finding) {
        return List.of(
                product.asked(),
                product.matched(),
                "match",
                "not stated",
                "",
                "",
                "",
                "",
                finding.code(),
                finding.sentence(),
                finding.buyer(),
                String.join("; ", finding.house()));
    }
}
