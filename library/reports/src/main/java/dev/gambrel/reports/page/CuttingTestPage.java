package dev.gambrel.reports.page;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.reports.markup.Markup;
import dev.gambrel.reports.picture.CutTreePicture;
import dev.gambrel.reports.picture.GramsPicture;
import dev.gambrel.reports.svg.Picture;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.cuttingtest.wording.FaultText;
import dev.gambrel.yields.cuttingtest.wording.VerdictText;
import java.util.List;

/**
 * Cutting tests as a page to be looked at and printed on A4, a section for each sheet: HTML that is well-formed XML, stands alone, holds no
 * script and fetches nothing.
 */
public final class CuttingTestPage {
    private static final String STYLE = """

            @page { size: A4; margin: 15mm 14mm; }
            body { font: 10pt/1.4 sans-serif; color: #1c1c1c; background: #fff; max-width: 182mm; margin: 0 auto; padding: 0 3mm; }
            h1 { font-size: 15pt; margin: 4mm 0 1mm; } h2 { font-size: 11.5pt; margin: 6mm 0 1.5mm; break-after: avoid; }
            h1, p, li, td, th, dd { overflow-wrap: anywhere; }
            svg { display: block; max-width: 100%; height: auto; }
            section { break-before: page; } section:first-of-type { break-before: auto; }
            table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
            thead { display: table-header-group; } tr, figure, .verdict { break-inside: avoid; }
            .picture td, .picture th { padding: 0; font-weight: normal; } figure { margin: 0; }
            .figures { font-size: 9pt; } .figures th, .figures td { border-bottom: 0.2mm solid #b4b4b4; padding: 0.4mm 1.5mm; }
            .figures thead th { border-bottom: 0.3mm solid #1c1c1c; font-weight: normal; color: #555; vertical-align: bottom; }
            .figures th { text-align: left; font-weight: normal; } .figures td, .figures thead th + th { text-align: right; }
            .heading { display: grid; grid-template-columns: max-content 1fr; gap: 0 4mm; margin: 0; }
            dt { color: #555; } dd { margin: 0; }
            .verdict { border: 0.5mm solid #1c1c1c; padding: 2mm 3mm; margin: 3mm 0; }
            .verdict strong { display: block; font-size: 14pt; }
            .wrong { border-width: 1mm; } li:first-child { font-weight: bold; } ol { margin: 0; padding-left: 6mm; }
            .more { padding-left: 5mm; } p { margin: 1.5mm 0; }
            .note { color: #555; font-size: 9pt; } footer { margin-top: 6mm; break-inside: avoid; }
            """;

    private static final String SPREAD =
            "The sheet does not balance: what is wrong is spread over all weights that were worked out. Use them once it is found and put right.";

    private final Markup out;

    private CuttingTestPage(Markup out) {
        this.out = out;
    }

    /**
     * Sets sheets on a page.
     *
     * @param reports what is said of each, one or more
     * @param cautions lines to stand under them
     * @return the whole file, to be kept as UTF-8
     */
    public static String of(List<SheetReport> reports, List<String> cautions) {
        return Markup.of(out -> new CuttingTestPage(out).page(reports, cautions));
    }

    private void page(List<SheetReport> reports, List<String> cautions) {
        out.doctype().open("html", "lang", "en").open("head");
        out.empty("meta", "charset", "UTF-8");
        out.element("title", "Cutting test: " + reports.get(0).sheet().name() + more(reports.size() - 1));
        out.style(STYLE);
        out.close().open("body");
        reports.forEach(this::sheet);
        out.open("footer");
        cautions.forEach(line -> out.element("p", line));
        out.close().close().close();
    }

    private static String more(int others) {
        return others == 0 ? "" : " and " + others + " more";
    }

    private void sheet(SheetReport report) {
        out.open("section");
        new SheetHead(out).write(report.sheet());
        verdict(report);
        tree(report);
        out.element("h2", "Where the grams went");
        spread(report);
        figure(GramsPicture.of(report));
        new SheetTables(out, report).write();
        out.close();
    }

    private void verdict(SheetReport report) {
        Verdict verdict = report.faults().verdict();
        out.open("p", "class", verdict == Verdict.BALANCES ? "verdict" : "verdict wrong");
        out.element("strong", VerdictText.words(verdict) + ".").text(" Why: ");
        out.text(VerdictText.evidence(report.test(), verdict)).close();
        amiss(FaultText.amiss(report.test(), report.faults()));
        offered(FaultText.offered(report.test(), report.faults()));
    }

    private void amiss(List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        out.element("h2", "What does not add up");
        for (String line : lines) {
            if (line.startsWith(" ")) {
                out.element("p", line.strip(), "class", "more");
            } else {
                out.element("p", line);
            }
        }
    }

    private void offered(List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        out.element("h2", "What would explain it");
        out.open("ol");
        lines.forEach(line -> out.element("li", line));
        out.close().element("p", FaultText.MERELY_OFFERED);
    }

    private void tree(SheetReport report) {
        CutTreePicture tree = CutTreePicture.of(report);
        out.element("h2", "The cut tree: what was expected, and what came out");
        spread(report);
        figure(tree.key());
        out.open("table", "class", "picture", "role", "presentation").open("thead");
        strip("th", tree.heading());
        out.close().open("tbody");
        tree.rows().forEach(row -> strip("td", row));
        out.close().close();
    }

    /** What must be known of every weight in balance where the sheet is wrong. */
    private void spread(SheetReport report) {
        if (report.faults().verdict() == Verdict.DOES_NOT_BALANCE) {
            out.element("p", SPREAD);
        }
    }

    private void strip(String cell, Picture strip) {
        out.open("tr").open(cell);
        strip.write(out);
        out.close().close();
    }

    private void figure(Picture picture) {
        out.open("figure");
        picture.write(out);
        out.close();
    }
}
