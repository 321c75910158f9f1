package dev.gambrel.yields.table;

import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.CarcassLot;
import dev.gambrel.yields.CombinedYields;
import dev.gambrel.yields.Doubt;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.figure.Spread;
import java.util.ArrayList;
import java.util.List;

/**
 * What several carcasses should give together, in print: what they differ by and the doubt about the means each in a column of
 * its own. Printed figures add up as in {@link YieldTable}. Immutable; the same yields give the same characters.
 */
public final class CombinedTable {
    private static final String NOTES = """
            ± is one standard deviation. What carcasses differ by averages out over many; a doubt about the mean shares is the same for
            all of them and does not. The range holds the central 95 % of both together, or of what carcasses differ by where the doubt
            is left out. What the carcasses weigh, and what that strays by, is taken as given. A spread is not stated where the
            specification gives none, or none for something that the weight depends on.
            Printed figures add up: parts are rounded by largest remainder to the printed figure of their cut, so a part may
            differ from its exact value by up to one in the last place.
            Figures are estimates from the shares in the specification; no carcass is bound to keep to them.
            """;

    private final CombinedYields yields;
    private final Figures figures;
    private final List<CombinedLine> parts;
    private final List<CombinedLine> totals;

    private CombinedTable(CombinedYields yields, Figures figures) {
        this.yields = yields;
        this.figures = figures;
        this.parts = CombinedLines.parts(yields, figures);
        this.totals = CombinedLines.totals(yields, figures);
    }

    /**
     * Makes the table.
     *
     * @param yields what to print
     * @param unit the unit of every weight
     * @param decimals places after the point, from 0 to {@value YieldTable#MAX_DECIMALS}
     * @return the table
     * @throws IllegalArgumentException if the unit is not one of weight or there are too many places
     */
    public static CombinedTable of(CombinedYields yields, Unit unit, int decimals) {
        return new CombinedTable(yields, YieldTable.figures(unit, decimals));
    }

    /**
     * The table as plain text, lines ended by LF.
     *
     * @return heading, parts, where it goes, and how to read it
     */
    public String text() {
        StringBuilder out = new StringBuilder();
        ExpectedYields one = yields.ofOne();
        out.append(YieldTable.heading(one.tree().specification()))
                .append(", ")
                .append(one.tree().species().name())
                .append('\n')
                .append(weighed())
                .append('\n')
                .append(doubt())
                .append("\n\n");
        if (!one.ways().isEmpty()) {
            WayLines.print(one.ways(), out);
            out.append('\n');
        }
        print("part", true, parts, out);
        out.append('\n');
        String heading = "where it all goes" + (one.portions().isEmpty() ? "" : ", before portioning");
        print(heading, false, totals, out);
        return out.append('\n').append(NOTES).toString();
    }

    private String weighed() {
        CarcassLot lot = yields.lot();
        String unit = " " + figures.unit().symbol();
        String number = lot.number() == 1 ? "1 carcass" : lot.number() + " carcasses";
        String each = figures.shown(lot.mean().mass().value()) + unit;
        String all = figures.shown(lot.kilograms().mean()) + unit;
        return "Expected for " + number + " of " + each + spreadOfEach(lot) + ", weighed "
                + lot.mean().basis().words() + ", " + all + " together";
    }

    private String spreadOfEach(CarcassLot lot) {
        if (lot instanceof CarcassLot.Weighed) {
            return " on average";
        }
        Spread spread = ((CarcassLot.Alike) lot).spread();
        if (spread instanceof Spread.Stated stated) {
            double sd = stated.standardDeviation();
            return sd == 0
                    ? " each"
                    : " ± " + figures.finer(sd) + " " + figures.unit().symbol() + " each";
        }
        return " each, give or take what is not stated";
    }

    private String doubt() {
        Doubt doubt = yields.doubt();
        if (doubt instanceof Doubt.FromTests from) {
            return "The mean shares are taken as found by " + from.tests() + " cutting test"
                    + (from.tests() == 1 ? "" : "s");
        } else if (doubt instanceof Doubt.OfParts) {
            return "How sure the mean shares are is said of each part";
        }
        return doubt instanceof Doubt.None
                ? "The mean shares are taken as known exactly"
                : "How sure the mean shares are is not said: the ranges hold only what carcasses differ by";
    }

    private void print(String heading, boolean isParts, List<CombinedLine> lines, StringBuilder out) {
        String unit = figures.unit().symbol();
        String range = yields.doubt() instanceof Doubt.NotSaid ? "doubt left out" : "doubt counted";
        TextGrid grid = new TextGrid();
        add(
                grid,
                isParts,
                "",
                "",
                unit + ", all",
                "± " + unit + ", between",
                "± " + unit + ", doubt",
                "95 % range,",
                "");
        String[] below = {"pieces", "carcasses", "carcasses", "about means", range, isParts ? "goes to" : ""};
        add(grid, isParts, heading, below);
        for (CombinedLine line : lines) {
            add(
                    grid,
                    isParts,
                    "  ".repeat(line.level()) + line.name(),
                    line.pieces(),
                    line.all(),
                    line.spreads().between(),
                    line.spreads().doubt(),
                    line.spreads().both().range(),
                    line.goesTo());
        }
        grid.print(out);
    }

    /** Totals have no pieces. */
    private static void add(TextGrid grid, boolean isParts, String name, String... cells) {
        List<String> row = new ArrayList<>(List.of(cells));
        if (!isParts) {
            row.remove(0);
        }
        row.add(0, name);
        grid.add(row.toArray(String[]::new));
    }

    /**
     * The table as comma-separated values: the parts, then the totals, told apart by the first column.
     *
     * @return a header and one line for each line of the table
     */
    public String csv() {
        String unit = " " + figures.unit().symbol();
        Csv csv = new Csv();
        csv.add(
                List.of("table", "name", "path", "goes to", "range holds"),
                List.of(
                        "level",
                        "pieces",
                        "all carcasses" + unit,
                        "standard deviation between carcasses" + unit,
                        "standard deviation of doubt about means" + unit,
                        "standard deviation of both" + unit,
                        "2.5 % point" + unit,
                        "97.5 % point" + unit));
        parts.forEach(line -> add(csv, "parts", line));
        totals.forEach(line -> add(csv, "totals", line));
        return csv.toString();
    }

    private void add(Csv csv, String table, CombinedLine line) {
        CombinedLine.Spreads spreads = line.spreads();
        String holds = yields.doubt() instanceof Doubt.NotSaid ? "between carcasses" : "both";
        csv.add(
                List.of(table, line.name(), line.path(), line.goesTo(), holds),
                List.of(
                        Integer.toString(line.level()),
                        line.pieces(),
                        line.all(),
                        spreads.between(),
                        spreads.doubt(),
                        spreads.both().sd(),
                        spreads.both().low(),
                        spreads.both().high()));
    }
}
