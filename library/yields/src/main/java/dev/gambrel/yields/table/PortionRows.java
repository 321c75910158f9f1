package dev.gambrel.yields.table;

import dev.gambrel.yields.portions.PortionYield;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Portions as lines of comma-separated values: the portions, what is left and what the cuts take add up to the cut. */
final class PortionRows {
    private final PortionYield portion;
    private final Figures figures;

    private PortionRows(PortionYield portion, Figures figures) {
        this.portion = portion;
        this.figures = figures;
    }

    static List<Line> of(List<PortionYield> portions, Figures figures) {
        return portions.stream()
                .flatMap(portion -> new PortionRows(portion, figures).lines().stream())
                .toList();
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>(3);
        String name = portion.from().portion().name().text();
        String number = portion.expectedNumberFromAll().isPresent()
                ? String.format(
                        Locale.ROOT, "%.1f", portion.expectedNumberFromAll().getAsDouble())
                : Line.NOT_STATED;
        String each = portion.each().map(weight -> figures.finer(weight.mean())).orElse(Line.NOT_STATED);
        lines.add(line(name, number, portion.expectedPortionsOfOne(), each, ""));
        if (portion.lostToKerf().isPresent()) {
            lines.add(line(name + ": lost to kerf", "", portion.lostToKerf(), "", "lost"));
        }
        lines.add(line(name + ": left", "", portion.expectedRemainder(), "", PortionLines.remainderTo(portion)));
        return lines;
    }

    private Line line(String name, String pieces, OptionalDouble ofOne, String each, String goesTo) {
        boolean known = ofOne.isPresent();
        double whole = portion.from().weight().mean();
        String all = known ? figures.shown(portion.from().pieces() * ofOne.getAsDouble()) : Line.NOT_STATED;
        String share = known && whole > 0
                ? Figures.percent(Math.round(Figures.percentSteps(100 * ofOne.getAsDouble() / whole)))
                : Line.NOT_STATED;
        return new Line(
                1,
                name,
                portion.from().cut().toString(),
                new Line.Weights(pieces, all, each, Line.Spreading.UNKNOWN),
                new Line.Shares(share, ""),
                goesTo);
    }
}
