package dev.gambrel.cli.drift;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.cli.terminal.Grid;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.quantity.ShownFigure;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.ControlChart;
import dev.gambrel.yields.control.HotellingAnswer;
import dev.gambrel.yields.drift.Baseline;
import dev.gambrel.yields.drift.CutDrift;
import dev.gambrel.yields.drift.Drift;
import dev.gambrel.yields.drift.DriftSentences;
import dev.gambrel.yields.drift.PartDrift;
import dev.gambrel.yields.drift.ShapeDrift;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How shares move, as text: each cut a table, then what moved in sentences. */
final class DriftText {
    private static final String NOTES = """
            A part is per cent of its cut, by the weights in balance. “Chance keeps to” is where a single test lies while nothing changes: the
            mean and 3 standard deviations either way, those from the differences of tests that follow one another. The average counts
            the newest test for a fifth, what came before for the rest: it finds small changes that last. T² measures a cut as a whole, by
            the ratios of its parts. A signal is a reason to look what changed, and no proof.

            """;

    private final Drift drift;
    private final YieldPlan plan;
    private final DriftSentences sentences;
    private final StringBuilder out = new StringBuilder();

    private DriftText(Drift drift) {
        this.drift = drift;
        this.plan = drift.tests().get(0).test().plan();
        this.sentences = new DriftSentences(drift);
    }

    static String of(ChartedSheets sheets, Drift drift, Baseline baseline) {
        DriftText text = new DriftText(drift);
        text.sheets(sheets, baseline);
        drift.cuts().forEach(text::table);
        text.moved();
        text.groups();
        return text.out + NOTES;
    }

    private void line(String line) {
        out.append(line).append('\n');
    }

    private void sheets(ChartedSheets sheets, Baseline baseline) {
        int tests = drift.tests().size();
        line(count(tests, "test") + " in the order "
                + (sheets.isByDate() ? "of their dates" : "in which they were given") + ", from " + name(0) + " to "
                + name(tests - 1) + ".");
        if (!sheets.isByDate() && tests > 1) {
            line("A sheet has no date such as 2026-03-02: see to it that the first test stands first.");
        }
        if (baseline instanceof Baseline.FirstTests first) {
            line("What is usual is told by the first " + Math.min(first.tests(), tests) + ".");
        }
        if (!sheets.leftOut().isEmpty()) {
            line("Left out, since they do not balance: "
                    + sheets.leftOut().stream().map(DriftText::name).collect(Collectors.joining(", "))
                    + ". “gambrel balance” says why.");
        }
        line("");
    }

    private static String name(SheetReport sheet) {
        return Visible.text(sheet.sheet().name());
    }

    private String name(int test) {
        return Visible.text(drift.tests().get(test).name());
    }

    private static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    private void table(CutDrift cut) {
        if (cut.tests().size() == 1) {
            line(plan.node(cut.cut()).address()
                    + ": one test tells all its parts, and one tells nothing of what moves.");
            line("");
            return;
        }
        String title = plan.node(cut.cut()).address() + ", % of it";
        Grid grid = new Grid().row(title, "mean", "chance keeps to", "lowest", "highest", "newest", "average now");
        cut.parts().forEach(part -> grid.row(cells(part)));
        out.append(grid.text());
        if (cut.tests().size() < drift.tests().size()) {
            line("  by the " + count(cut.tests().size(), "test") + " in which all its parts are known");
        }
        shape(cut);
        line("");
    }

    private String[] cells(PartDrift part) {
        List<Double> all = part.percents();
        return new String[] {
            "  " + plan.node(part.part()).name(),
            mean(part),
            usual(part.single()),
            percent(all.stream().mapToDouble(x -> x).min().orElseThrow()),
            percent(all.stream().mapToDouble(x -> x).max().orElseThrow()),
            percent(all.get(all.size() - 1)),
            part.average() instanceof ChartAnswer.Drawn drawn ? percent(last(drawn.chart())) : "-"
        };
    }

    private static double last(ControlChart chart) {
        return chart.points().get(chart.points().size() - 1).plotted();
    }

    private static String mean(PartDrift part) {
        return part.single() instanceof ChartAnswer.Drawn drawn
                ? percent(drawn.chart().level().centre())
                : percent(part.percents().stream().mapToDouble(x -> x).average().orElseThrow());
    }

    private static String usual(ChartAnswer answer) {
        if (answer instanceof ChartAnswer.Drawn drawn) {
            return range(drawn.chart().points().get(0).limits());
        } else if (answer instanceof ChartAnswer.TooFew few) {
            return range(few.next()) + "?";
        }
        return "-";
    }

    /** No share is below nothing or above all. */
    private static String range(Interval range) {
        return percent(Math.max(0, range.low())) + " to " + percent(Math.min(100, range.high()));
    }

    private static String percent(double percent) {
        return ShownFigure.of(percent, 2);
    }

    private void shape(CutDrift cut) {
        if (cut.shape() instanceof ShapeDrift.Charted charted) {
            double newest =
                    charted.chart().squared().get(charted.chart().squared().size() - 1);
            line("  as a whole, by "
                    + charted.parts().stream().map(name -> name.text()).collect(Collectors.joining(", "))
                    + ": T² of the newest test is " + ShownFigure.of(newest, 1) + ", and chance keeps below "
                    + ShownFigure.of(charted.chart().limit(), 1));
        } else if (cut.shape() instanceof ShapeDrift.NotCharted not) {
            line("  as a whole: " + why(not.why()));
        }
    }

    private static String why(HotellingAnswer answer) {
        return answer instanceof HotellingAnswer.TooFew few
                ? "not charted, since that needs " + few.needed() + " tests and there "
                        + (few.tests() == 1 ? "is " : "are ") + few.tests()
                : "not charted, since some ratio of its parts never varies: was a weight worked out of another?";
    }

    private void moved() {
        List<String> moved = new ArrayList<>();
        drift.cuts().forEach(cut -> moved.addAll(sentences.of(cut)));
        long charts = drift.cuts().stream()
                .flatMap(cut -> cut.parts().stream())
                .filter(part -> part.single() instanceof ChartAnswer.Drawn)
                .count();
        if (charts == 0) {
            line("No share is charted: that needs " + ChartAnswer.FEWEST
                    + " tests that tell it and stray. A range with a question mark is"
                    + " where the next test will lie in 95 of 100 cases.");
        } else if (moved.isEmpty()) {
            line("Nothing moved: chance explains every test.");
        } else {
            line("What moved");
            moved.forEach(sentence -> line("  " + sentence));
            line("  Of all " + charts + " shares that are charted, chance alone would put about "
                    + ShownFigure.of(drift.likelyFalseSignals(), 1) + " points beyond their limits.");
        }
        line("");
    }

    private void groups() {
        if (drift.comparisons() == 0) {
            line("Cutters, lots and scales are not compared: that needs two of them with two tests each.");
        } else if (drift.groups().isEmpty()) {
            line("Cutters, lots and scales: of " + count(drift.comparisons(), "comparison")
                    + " none shows more than chance explains.");
        } else {
            line("By cutter, lot and scale, of " + count(drift.comparisons(), "comparison"));
            drift.groups().forEach(finding -> line("  " + sentences.of(finding)));
            line("  Of such differences about 1 in 20 is chance; they may have had other carcasses.");
        }
        line("");
    }
}
