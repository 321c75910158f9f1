package dev.gambrel.yields.table;

import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.portions.PortionYield;
import dev.gambrel.yields.portions.Promise;
import dev.gambrel.yields.working.Pairs;
import java.util.List;
import java.util.stream.Collectors;

/** The table as it is read on paper. */
final class TextReport {
    private static final String NOTES = """
            All pieces are those of both sides together; one piece is one leg or one shoulder. The weight on the scale is taken
            as exact. ± is one standard deviation and the range holds the central 95 %, both of all pieces together. A spread is
            not stated where the specification gives none, or none for something that the weight depends on.
            Printed figures add up: parts are rounded by largest remainder to the printed figure of their cut, so a part may
            differ from its exact value by up to one in the last place. Totals are rounded by themselves and add up too; one may
            differ in the last place from the sum of its printed lines.
            Figures are estimates from the shares in the specification; no carcass is bound to keep to them.
            """;

    private TextReport() {}

    static String of(
            ExpectedYields yields, Figures figures, List<Line> parts, List<Line> totals, List<Promise> promises) {
        StringBuilder out = new StringBuilder();
        head(yields, figures, out);
        out.append('\n');
        if (!yields.ways().isEmpty()) {
            WayLines.print(yields.ways(), out);
            out.append('\n');
        }
        parts(figures, parts, out);
        out.append('\n');
        String heading = "where it all goes" + (yields.portions().isEmpty() ? "" : ", before portioning");
        totals(heading, figures, totals, out);
        withoutShare(yields, out);
        if (LeanLines.areSaid(yields)) {
            out.append('\n');
            LeanLines.print("how lean it is" + (yields.portions().isEmpty() ? "" : ", before portioning"), yields, out);
        }
        if (!yields.portions().isEmpty()) {
            out.append('\n');
            List<PortionYield> portions = PortionYield.of(yields);
            PortionLines.print(portions, figures, out);
            EachPortionLines.print(portions, yields.tree().parts(), figures, out);
        }
        PromiseLines.print(promises, yields, figures, out);
        return out.append('\n').append(NOTES).toString();
    }

    /** What is not stated is not taken for nothing: the reader is told where its weight is counted. */
    private static void withoutShare(ExpectedYields yields, StringBuilder out) {
        String unstated = yields.rows().stream()
                .filter(row -> row.allPieces().isEmpty())
                .map(row -> row.path().toString())
                .collect(Collectors.joining(", "));
        if (!unstated.isEmpty()) {
            out.append("No share is stated of ")
                    .append(unstated)
                    .append(": the weight is counted with what is left of the cut, not with where it goes.\n");
        }
    }

    private static void head(ExpectedYields yields, Figures figures, StringBuilder out) {
        out.append(YieldTable.heading(yields.tree().specification()))
                .append(", ")
                .append(yields.tree().species().name())
                .append("\nExpected for a carcass of ")
                .append(figures.shown(yields.given().mass().value()))
                .append(' ')
                .append(figures.unit().symbol())
                .append(", weighed ")
                .append(yields.given().basis().words())
                .append('\n');
        if (!yields.pairs().equals(Pairs.ALIKE)) {
            out.append("The two pieces of a pair are taken as ")
                    .append(yields.pairs().words())
                    .append('\n');
        }
    }

    private static void parts(Figures figures, List<Line> lines, StringBuilder out) {
        String unit = figures.unit().symbol();
        TextGrid grid = new TextGrid();
        grid.add("", "", unit + ", all", unit + ", one", "", "95 % range,", "% of cut", "% of", "");
        grid.add("part", "pieces", "pieces", "piece", "± " + unit, "all pieces", "above", "carcass", "goes to");
        for (Line line : lines) {
            Line.Weights w = line.weights();
            grid.add(
                    "  ".repeat(line.level()) + line.name(),
                    w.pieces(),
                    w.all(),
                    w.one(),
                    w.spread().sd(),
                    w.spread().range(),
                    line.shares().ofCutAbove(),
                    line.shares().ofCarcass(),
                    line.goesTo());
        }
        grid.print(out);
    }

    private static void totals(String heading, Figures figures, List<Line> lines, StringBuilder out) {
        String unit = figures.unit().symbol();
        TextGrid grid = new TextGrid();
        grid.add(heading, unit, "± " + unit, "95 % range", "% of all", "");
        for (Line line : lines) {
            Line.Weights w = line.weights();
            grid.add(
                    "  ".repeat(line.level()) + line.name(),
                    w.all(),
                    w.spread().sd(),
                    w.spread().range(),
                    line.shares().ofCarcass(),
                    "");
        }
        grid.print(out);
    }
}
