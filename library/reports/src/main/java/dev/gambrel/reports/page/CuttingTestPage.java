package dev.gambrel.reports.page;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.reports.markup.Markup;
import dev.gambrel.reports.picture.CutTreePicture;
import dev.gambrel.reports.picture.GramsPicture;
import dev.gambrel.reports.svg.Picture;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.cuttingtest.wording.FaultText;
import dev.gambrel.yields.cuttingtest.wording.VerdictText;
import java.util.List;

/**
 * Cutting tests as a page to be looked at and printed on A4, a section for each sheet: HTML that is well-formed XML, stands alone, holds no
 * script and fetches nothing.
 */
public final class CuttingTestPage {
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
        String title = "Cutting test: " + reports.get(0).sheet().name() + more(reports.size() - 1);
        return PageFrame.of(title, cautions, out -> reports.forEach(new CuttingTestPage(out)::sheet));
    }

    private static String more(int others) {
        return others == 0 ? "" : " and " + others + " more";
    }

    private void sheet(SheetReport report) {
        out.open("section");
        out.element("h1", "Cutting test " + report.sheet().name());
        verdict(report.test(), report.faults().verdict());
        new SheetHead(out).write(report.sheet());
        FaultText.besides(report.test(), report.weighed(), SheetReport.LEVEL).forEach(line -> out.element("p", line));
        amiss(FaultText.amiss(report.test(), report.faults()));
        offered(FaultText.offered(report.test(), report.faults()));
        tree(report);
        out.element("h2", "Where the grams went");
        spread(report);
        figure(GramsPicture.of(report));
        out.element(
                "p", "Whole grams, by the largest remainder, so that they add up as they are shown.", "class", "note");
        new SheetTables(out, report).write();
        out.close();
    }

    /** It stands before whatever a stranger wrote, so that nothing pushes it away. */
    private void verdict(CuttingTest test, Verdict verdict) {
        out.open("p", "class", verdict == Verdict.BALANCES ? "verdict" : "verdict wrong");
        out.element("strong", VerdictText.words(verdict) + ".").text(" Why: ");
        out.text(VerdictText.evidence(test, verdict)).close();
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
