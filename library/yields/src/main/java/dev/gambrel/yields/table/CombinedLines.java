package dev.gambrel.yields.table;

import dev.gambrel.yields.CombinedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.figure.CombinedEstimate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The lines of several carcasses together: parts are apportioned to their cut, streams to their outcome. */
final class CombinedLines {
    private final CombinedYields yields;
    private final Figures figures;
    private final List<CombinedLine> lines = new ArrayList<>();

    private record Total(String name, CombinedEstimate weight) {}

    private CombinedLines(CombinedYields yields, Figures figures) {
        this.yields = yields;
        this.figures = figures;
    }

    static List<CombinedLine> parts(CombinedYields yields, Figures figures) {
        CombinedLines parts = new CombinedLines(yields, figures);
        YieldRow weighed = yields.ofOne().weighed();
        parts.add(weighed, Math.round(parts.steps(weighed)));
        return parts.lines;
    }

    private double steps(YieldRow row) {
        return figures.steps(yields.allPieces(row).map(CombinedEstimate::mean).orElse(0.0));
    }

    private void add(YieldRow row, long printed) {
        String pieces = Figures.number(row.pieces() * yields.lot().number());
        String goesTo = PartLines.goesTo(row);
        lines.add(yields.allPieces(row)
                .map(weight -> new CombinedLine(
                        row.level(),
                        row.name(),
                        row.path().toString(),
                        pieces,
                        figures.shown(printed),
                        CombinedLine.Spreads.of(weight, yields.doubt(), figures),
                        goesTo))
                .orElse(new CombinedLine(
                        row.level(),
                        row.name(),
                        row.path().toString(),
                        pieces,
                        Line.NOT_STATED,
                        CombinedLine.Spreads.UNKNOWN,
                        goesTo)));
        List<YieldRow> parts = row.parts();
        if (!parts.isEmpty()) {
            long[] steps = LargestRemainder.apportion(
                    parts.stream().mapToDouble(this::steps).toArray(), printed);
            IntStream.range(0, steps.length).forEach(i -> add(parts.get(i), steps[i]));
        }
    }

    static List<CombinedLine> totals(CombinedYields yields, Figures figures) {
        CombinedLines totals = new CombinedLines(yields, figures);
        YieldRow weighed = yields.ofOne().weighed();
        CombinedEstimate all = yields.allPieces(weighed).orElseThrow();
        long whole = Math.round(figures.steps(all.mean()));
        totals.add(0, new Total("all that was weighed", all), whole);
        List<Outcome> outcomes = Arrays.stream(Outcome.values())
                .filter(o -> o != Outcome.NOT_STATED || yields.total(o).mean() > 0)
                .toList();
        List<Total> ofOutcomes = outcomes.stream()
                .map(o -> new Total(o.words(), yields.total(o)))
                .toList();
        long[] steps = totals.apportion(ofOutcomes, whole);
        for (int i = 0; i < steps.length; i++) {
            totals.add(1, ofOutcomes.get(i), steps[i]);
            List<Total> inside = totals.inside(outcomes.get(i));
            long[] below = totals.apportion(inside, inside.isEmpty() ? 0 : steps[i]);
            for (int j = 0; j < below.length; j++) {
                totals.add(2, inside.get(j), below[j]);
            }
        }
        return totals.lines;
    }

    private long[] apportion(List<Total> totals, long whole) {
        return LargestRemainder.apportion(
                totals.stream()
                        .mapToDouble(total -> figures.steps(total.weight().mean()))
                        .toArray(),
                whole);
    }

    private List<Total> inside(Outcome outcome) {
        List<Total> inside = new ArrayList<>();
        if (outcome == Outcome.SALEABLE) {
            inside.add(new Total("products", yields.products()));
        }
        for (CombinedYields.StreamTotal stream : yields.streams()) {
            if (Outcome.of(stream.stream().kind()) == outcome) {
                inside.add(new Total(TotalLines.name(stream.stream()), stream.weight()));
            }
        }
        return inside;
    }

    private void add(int level, Total total, long printed) {
        CombinedLine.Spreads spreads = CombinedLine.Spreads.of(total.weight(), yields.doubt(), figures);
        lines.add(new CombinedLine(level, total.name(), "", "", figures.shown(printed), spreads, ""));
    }
}
