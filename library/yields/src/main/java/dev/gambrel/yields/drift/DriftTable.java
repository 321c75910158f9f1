package dev.gambrel.yields.drift;

import dev.gambrel.quantity.ShownFigure;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.ControlChart;
import dev.gambrel.yields.figure.Interval;
import java.util.ArrayList;
import java.util.List;

/**
 * The shares of a cut as a table to be read: one row to each part, in per cent of the cut to two decimals.
 *
 * @param rows the first is the heading, all of as many cells
 */
public record DriftTable(List<List<String>> rows) {
    private static final String NOTHING = "-";

    /** Copies the list. */
    public DriftTable {
        rows = rows.stream().map(List::copyOf).toList();
    }

    /**
     * Sets a cut in a table.
     *
     * @param drift how the shares move
     * @param cut one of it
     * @return mean, where a single test lies while nothing changes (with a question mark where that is merely the range of the next test),
     *     extremes, the newest test, and the moving average now
     */
    public static DriftTable of(Drift drift, CutDrift cut) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                drift.node(cut.cut()).address() + ", % of it",
                "mean",
                "chance keeps to",
                "lowest",
                "highest",
                "newest",
                "average now"));
        cut.parts().forEach(part -> rows.add(row(drift.node(part.part()).name(), part)));
        return new DriftTable(rows);
    }

    private static List<String> row(String name, PartDrift part) {
        List<Double> all = part.percents();
        return List.of(
                name,
                mean(part),
                usual(part.single()),
                percent(all.stream().mapToDouble(x -> x).min().orElseThrow()),
                percent(all.stream().mapToDouble(x -> x).max().orElseThrow()),
                percent(all.get(all.size() - 1)),
                part.average() instanceof ChartAnswer.Drawn drawn ? percent(last(drawn.chart())) : NOTHING);
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
        return NOTHING;
    }

    /** No share is below nothing or above all. */
    private static String range(Interval range) {
        return percent(Math.max(0, range.low())) + " to " + percent(Math.min(100, range.high()));
    }

    private static String percent(double percent) {
        return ShownFigure.of(percent, 2);
    }
}
