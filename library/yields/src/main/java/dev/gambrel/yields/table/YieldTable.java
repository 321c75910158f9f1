package dev.gambrel.yields.table;

import dev.gambrel.diagnostic.Visible;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Specification;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.portions.PortionYield;
import dev.gambrel.yields.portions.Promise;
import java.util.ArrayList;
import java.util.List;

/**
 * Expected yields in print. Immutable; the same yields give the same characters.
 *
 * <p>Printed figures add up. The weight given is rounded, then each cut's parts are apportioned to the cut's own printed
 * figure by {@link LargestRemainder}, so that each is within one step of its exact value; shares of the carcass likewise,
 * and shares of each cut add up to 100. The totals add up by themselves. Weights of one piece add up where a cut and its
 * parts have as many pieces.
 */
public final class YieldTable {
    /** The most places after the point. */
    public static final int MAX_DECIMALS = 6;

    private final ExpectedYields yields;
    private final Figures figures;
    private final List<Line> parts;
    private final List<Line> totals;
    private final List<Promise> promises;

    private YieldTable(ExpectedYields yields, Figures figures, List<Promise> promises) {
        this.yields = yields;
        this.figures = figures;
        this.promises = List.copyOf(promises);
        this.parts = PartLines.of(yields, figures);
        this.totals = TotalLines.of(yields, figures);
    }

    /**
     * Makes the table.
     *
     * @param yields what to print
     * @param unit the unit of every weight
     * @param decimals places after the point, from 0 to {@value #MAX_DECIMALS}
     * @return the table
     * @throws IllegalArgumentException if the unit is not one of weight or there are too many places
     */
    public static YieldTable of(ExpectedYields yields, Unit unit, int decimals) {
        return new YieldTable(yields, figures(unit, decimals), List.of());
    }

    static Figures figures(Unit unit, int decimals) {
        if (unit.dimension() != Dimension.WEIGHT || decimals < 0 || decimals > MAX_DECIMALS) {
            throw new IllegalArgumentException(
                    "cannot print weights in " + unit.symbol() + " to " + decimals + " places");
        }
        return new Figures(unit, decimals);
    }

    /**
     * The same table with what can be promised of each portion, each carcass taken as the one that the table is of.
     *
     * @param promises how sure, and from how many carcasses
     * @return the table
     */
    public YieldTable promising(List<Promise> promises) {
        return new YieldTable(yields, figures, promises);
    }

    /**
     * The table as plain text, lines ended by LF.
     *
     * @return heading, parts, where it goes, portions, and how to read it
     */
    public String text() {
        return TextReport.of(yields, figures, parts, totals, promises);
    }

    /**
     * The table as comma-separated values: the parts, the totals, the portions, then what can be promised of them, told
     * apart by the first column. Of a portion the pieces are the portions, and one piece is one of them.
     *
     * @return a header and one line for each line of the table
     */
    public String csv() {
        String unit = " " + figures.unit().symbol();
        Csv csv = new Csv();
        csv.add(
                List.of("table", "name", "path", "goes to"),
                List.of(
                        "level",
                        "pieces",
                        "all pieces" + unit,
                        "one piece" + unit,
                        "standard deviation of all pieces" + unit,
                        "2.5 % point" + unit,
                        "97.5 % point" + unit,
                        "% of cut above",
                        "% of carcass"));
        parts.forEach(line -> add(csv, "parts", line));
        totals.forEach(line -> add(csv, "totals", line));
        List<PortionYield> portions = PortionYield.of(yields);
        PortionRows.of(portions, figures).forEach(line -> add(csv, "portions", line));
        PromiseLines.rows(promises, portions).forEach(line -> add(csv, "promised", line));
        return csv.toString();
    }

    private static void add(Csv csv, String table, Line line) {
        Line.Weights w = line.weights();
        List<String> cells = new ArrayList<>(List.of(Integer.toString(line.level()), w.pieces(), w.all(), w.one()));
        cells.addAll(List.of(w.spread().sd(), w.spread().low(), w.spread().high()));
        cells.addAll(List.of(line.shares().ofCutAbove(), line.shares().ofCarcass()));
        csv.add(List.of(table, line.name(), line.path(), line.goesTo()), cells);
    }

    static String heading(Specification specification) {
        return Visible.text(specification.title()) + ", revision " + specification.revision();
    }
}
