package dev.gambrel.cli.compare;

import dev.gambrel.cli.compare.report.ComparisonReport.Weights;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.comparison.Amount;
import dev.gambrel.yields.comparison.AmountChange;
import dev.gambrel.yields.comparison.YieldComparison;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * What a carcass gives by both: the lines that differ as printed, and each outcome that there is.
 *
 * @param unit the unit of weights
 * @param decimals their places after the point
 */
record WeightLines(Unit unit, int decimals) {
    private static final int PLACES_OF_NUMBERS = 1;
    private static final Amount NOTHING = new Amount.Of(0);
    private static final String NOTES = """
            Each figure is rounded by itself, and the difference is that of the two as printed; lines that print the same are left
            out. A kilogram that is portioned is counted with its cut. Figures are estimates from the shares in the
            specifications; no carcass is bound to keep to them.
            """;

    void print(Weights.WorkedOut worked, StringBuilder out) {
        YieldComparison lines = worked.lines();
        double factor = unit.factor().doubleValue();
        out.append("Expected of a carcass of ")
                .append(lines.carcass().mass())
                .append(", weighed ")
                .append(lines.carcass().basis().words())
                .append('\n');
        worked.remarks().forEach(remark -> out.append(Visible.text(remark)).append('\n'));
        List<Row> rows = new ArrayList<>(List.of(new Row(unit.symbol(), "before", "after", "difference")));
        lines.products().forEach(line -> add("", line, factor, decimals, rows));
        lines.streams().forEach(line -> add("stream ", line, factor, decimals, rows));
        lines.outcomes().stream()
                .filter(line -> !line.before().equals(NOTHING) || !line.after().equals(NOTHING))
                .forEach(line -> rows.add(row("all " + line.name(), line, factor, decimals)));
        print(rows, out);
        List<Row> numbers =
                new ArrayList<>(List.of(new Row("portions from all pieces", "before", "after", "difference")));
        lines.portions().forEach(line -> add("", line, 1, PLACES_OF_NUMBERS, numbers));
        if (numbers.size() > 1) {
            out.append('\n');
            print(numbers, out);
        }
        out.append('\n').append(NOTES);
    }

    private record Row(String name, String before, String after, String difference) {}

    private static void add(String kind, AmountChange line, double factor, int places, List<Row> rows) {
        Row row = row(kind + line.name(), line, factor, places);
        if (!row.before().equals(row.after())) {
            rows.add(row);
        }
    }

    private static Row row(String name, AmountChange line, double factor, int places) {
        return new Row(
                Visible.text(name),
                shown(line.before(), factor, places),
                shown(line.after(), factor, places),
                difference(line, factor, places));
    }

    private static String shown(Amount amount, double factor, int places) {
        if (amount instanceof Amount.Of of) {
            return rounded(of.value() / factor, places).toPlainString();
        }
        return amount instanceof Amount.NotThere ? "not there" : "not stated";
    }

    private static String difference(AmountChange line, double factor, int places) {
        if (line.difference().isEmpty()) {
            return "not stated";
        }
        BigDecimal before = rounded(line.before().known().getAsDouble() / factor, places);
        BigDecimal after = rounded(line.after().known().getAsDouble() / factor, places);
        BigDecimal more = after.subtract(before);
        return (more.signum() > 0 ? "+" : "") + more.toPlainString();
    }

    private static BigDecimal rounded(double value, int places) {
        return new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
    }

    private static void print(List<Row> rows, StringBuilder out) {
        int name = rows.stream().mapToInt(row -> width(row.name())).max().orElse(0);
        int before = rows.stream().mapToInt(row -> width(row.before())).max().orElse(0);
        int after = rows.stream().mapToInt(row -> width(row.after())).max().orElse(0);
        int difference =
                rows.stream().mapToInt(row -> width(row.difference())).max().orElse(0);
        for (Row row : rows) {
            out.append(row.name())
                    .append(" ".repeat(name - width(row.name())))
                    .append(right(row.before(), before))
                    .append(right(row.after(), after))
                    .append(right(row.difference(), difference))
                    .append('\n');
        }
    }

    private static String right(String figure, int width) {
        return "  " + " ".repeat(width - width(figure)) + figure;
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
