package dev.gambrel.yields.table;

import dev.gambrel.tree.Stream;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.StreamYield;
import dev.gambrel.yields.figure.Estimate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What becomes of the whole: outcomes apportioned to the weight given, and streams to their outcome. */
final class TotalLines {
    private final ExpectedYields yields;
    private final Figures figures;
    private final double whole;
    private final List<Line> lines = new ArrayList<>();

    private record Total(String name, Estimate weight) {}

    private TotalLines(ExpectedYields yields, Figures figures) {
        this.yields = yields;
        this.figures = figures;
        this.whole = yields.given().mass().value();
    }

    static List<Line> of(ExpectedYields yields, Figures figures) {
        TotalLines totals = new TotalLines(yields, figures);
        totals.add();
        return totals.lines;
    }

    private void add() {
        long steps = Math.round(figures.steps(whole));
        long percent = Math.round(Figures.percentSteps(100));
        lines.add(line(0, new Total("all that was weighed", Estimate.exactly(whole)), steps, percent));
        List<Outcome> outcomes = Arrays.stream(Outcome.values())
                .filter(o -> o != Outcome.NOT_STATED || yields.total(o).mean() > 0)
                .toList();
        List<Total> totals = outcomes.stream()
                .map(o -> new Total(o.words(), yields.total(o)))
                .toList();
        long[] weights = weights(totals, steps);
        long[] percents = percents(totals, percent);
        for (int i = 0; i < weights.length; i++) {
            lines.add(line(1, totals.get(i), weights[i], percents[i]));
            addStreams(outcomes.get(i), weights[i], percents[i]);
        }
    }

    private void addStreams(Outcome outcome, long weight, long percent) {
        List<Total> inside = inside(outcome);
        long[] weights = weights(inside, inside.isEmpty() ? 0 : weight);
        long[] percents = percents(inside, inside.isEmpty() ? 0 : percent);
        for (int i = 0; i < weights.length; i++) {
            lines.add(line(2, inside.get(i), weights[i], percents[i]));
        }
    }

    private List<Total> inside(Outcome outcome) {
        List<Total> inside = new ArrayList<>();
        if (outcome == Outcome.SALEABLE) {
            inside.add(new Total("products", yields.products()));
        }
        for (StreamYield stream : yields.streams()) {
            if (Outcome.of(stream.stream().kind()) == outcome) {
                inside.add(new Total(name(stream.stream()), stream.weight()));
            }
        }
        return inside;
    }

    static String name(Stream stream) {
        String name = "stream " + stream.name();
        if (stream.lean() instanceof Stream.Lean.Stated lean) {
            String judged = lean.judged().words();
            return name + ", lean " + lean.percent() + (judged.isEmpty() ? "" : " " + judged);
        }
        return name;
    }

    private long[] weights(List<Total> totals, long total) {
        return LargestRemainder.apportion(
                totals.stream()
                        .mapToDouble(t -> figures.steps(t.weight().mean()))
                        .toArray(),
                total);
    }

    private long[] percents(List<Total> totals, long total) {
        return LargestRemainder.apportion(
                totals.stream()
                        .mapToDouble(t -> Figures.percentSteps(100 * t.weight().mean() / whole))
                        .toArray(),
                total);
    }

    private Line line(int level, Total total, long weight, long percent) {
        Line.Weights weights = new Line.Weights("", figures.shown(weight), "", figures.spreading(total.weight()));
        return new Line(level, total.name(), "", weights, new Line.Shares("", Figures.percent(percent)), "");
    }
}
