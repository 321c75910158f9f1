package dev.gambrel.cli.drift;

import dev.gambrel.cli.terminal.Grid;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.drift.CutDrift;
import dev.gambrel.yields.drift.Drift;
import dev.gambrel.yields.drift.DriftSentences;
import dev.gambrel.yields.drift.DriftTable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** How shares move, as text: each cut a table, then what moved in sentences. */
final class DriftText {
    private static final String NOTES = """
            A part is per cent of its cut, by the weights in balance. “Chance keeps to” is where a single test lies while nothing changes: the
            mean and 3 standard deviations either way, those from the differences of tests that follow one another. The average counts
            the newest test for a fifth, what came before for the rest: it finds small changes that last. T² measures a cut as a whole, by
            the ratios of its parts. A signal is a reason to look what changed, and no proof.

            """;

    private DriftText() {}

    static String of(List<String> about, Drift drift) {
        DriftSentences sentences = new DriftSentences(drift);
        StringBuilder out = new StringBuilder();
        lines(out, about);
        if (drift.tests().size() == 1) {
            return out + "One test shows no change: bring " + ChartAnswer.FEWEST + " or more.\n\n";
        }
        drift.cuts().forEach(cut -> cut(out, drift, cut, sentences));
        List<String> moved = sentences.ofAllCharts();
        lines(out, moved.size() == 1 ? moved : under("What moved", moved));
        List<String> groups = sentences.ofAllGroups();
        lines(out, groups.size() == 1 ? groups : under("By cutter, lot and scale", groups));
        return out + NOTES;
    }

    private static List<String> under(String heading, List<String> lines) {
        return Stream.concat(Stream.of(heading), lines.stream().map(line -> "  " + line))
                .toList();
    }

    private static void lines(StringBuilder out, List<String> lines) {
        lines.forEach(line -> out.append(line).append('\n'));
        out.append('\n');
    }

    private static void cut(StringBuilder out, Drift drift, CutDrift cut, DriftSentences sentences) {
        if (cut.tests().size() == 1) {
            lines(
                    out,
                    List.of(drift.node(cut.cut()).address()
                            + ": one test tells all its parts, and one tells nothing of what moves."));
            return;
        }
        Grid grid = new Grid();
        List<List<String>> rows = DriftTable.of(drift, cut).rows();
        for (List<String> row : rows) {
            List<String> cells = new ArrayList<>(row);
            cells.set(0, (grid.isEmpty() ? "" : "  ") + row.get(0));
            grid.row(cells.toArray(String[]::new));
        }
        out.append(grid.text());
        List<String> under = new ArrayList<>();
        if (cut.tests().size() < drift.tests().size()) {
            under.add("  by the " + cut.tests().size() + " tests in which all its parts are known");
        }
        sentences.ofShape(cut).map(line -> "  " + line).ifPresent(under::add);
        lines(out, under);
    }
}
