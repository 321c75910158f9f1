package dev.gambrel.reports.page;

import dev.gambrel.reports.markup.Markup;
import dev.gambrel.reports.picture.DriftPicture;
import dev.gambrel.reports.svg.Picture;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.drift.CutDrift;
import dev.gambrel.yields.drift.Drift;
import dev.gambrel.yields.drift.DriftSentences;
import dev.gambrel.yields.drift.DriftTable;
import dev.gambrel.yields.drift.PartDrift;
import dev.gambrel.yields.drift.ShapeDrift;
import java.util.List;

/**
 * What moved from cutting test to cutting test, as a page to be looked at and printed on A4: what moved first, with its charts, then every
 * cut as a table with its chart as a whole. It is well-formed XML, stands alone, holds no script and fetches nothing.
 */
public final class DriftPage {
    private final Markup out;
    private final Drift drift;
    private final DriftSentences sentences;

    private DriftPage(Markup out, Drift drift) {
        this.out = out;
        this.drift = drift;
        this.sentences = new DriftSentences(drift);
    }

    /**
     * Sets the charts on a page.
     *
     * @param title of the page
     * @param about lines on which tests are charted
     * @param drift how the shares move
     * @param cautions lines to stand under them
     * @return the whole file, to be kept as UTF-8
     */
    public static String of(String title, List<String> about, Drift drift, List<String> cautions) {
        return PageFrame.of(title, cautions, out -> new DriftPage(out, drift).write(title, about));
    }

    private void write(String title, List<String> about) {
        out.element("h1", title);
        about.forEach(line -> out.element("p", line));
        out.open("p", "class", drift.isQuiet() ? "verdict" : "verdict wrong");
        out.element("strong", drift.isQuiet() ? "No more moved than chance makes." : "Something moved.");
        out.text(" A signal is a reason to look what changed, and no proof.").close();
        out.element("h2", "What moved");
        sentences.ofAllCharts().forEach(line -> out.element("p", line));
        drift.cuts().forEach(this::movedParts);
        out.element("h2", "By cutter, lot and scale");
        sentences.ofAllGroups().forEach(line -> out.element("p", line));
        drift.cuts().stream().filter(cut -> cut.tests().size() > 1).forEach(this::cut);
    }

    private void movedParts(CutDrift cut) {
        cut.told().stream().filter(part -> !sentences.of(cut, part).isEmpty()).forEach(part -> charts(cut, part));
    }

    private void charts(CutDrift cut, PartDrift part) {
        chart(cut, part, part.single(), "single tests");
        chart(cut, part, part.average(), "the average that counts the newest tests most");
    }

    private void chart(CutDrift cut, PartDrift part, ChartAnswer answer, String what) {
        if (answer instanceof ChartAnswer.Drawn drawn
                && !drawn.chart().signals().isEmpty()) {
            figure(DriftPicture.of(drift, cut, part, drawn.chart(), what));
        }
    }

    private void figure(Picture picture) {
        out.open("figure");
        picture.write(out);
        out.close();
    }

    private void cut(CutDrift cut) {
        List<List<String>> rows = DriftTable.of(drift, cut).rows();
        out.element("h2", drift.node(cut.cut()).address());
        out.open("table", "class", "figures").open("thead").open("tr");
        rows.get(0).forEach(cell -> out.element("th", cell, "scope", "col"));
        out.close().close().open("tbody");
        for (List<String> row : rows.subList(1, rows.size())) {
            out.open("tr").element("th", row.get(0), "scope", "row");
            row.subList(1, row.size()).forEach(cell -> out.element("td", cell));
            out.close();
        }
        out.close().close();
        sentences.ofShape(cut).ifPresent(line -> out.element("p", line, "class", "note"));
        if (cut.shape() instanceof ShapeDrift.Charted charted) {
            figure(DriftPicture.of(drift, cut, charted.chart()));
        }
    }
}
