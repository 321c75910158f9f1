package dev.gambrel.batches;

import dev.gambrel.batches.csv.CsvBytes;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.batch.BatchFigure;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.batch.BatchSums;
import dev.gambrel.yields.batch.BatchTotal;
import dev.gambrel.yields.figure.Spread;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What all carcasses of a batch give together, of every line and every total.
 *
 * @param plan the specification as it was worked
 * @param sums over all carcasses
 * @param printed unit and places
 */
public record SumsTable(BatchPlan plan, BatchSums sums, BatchOrder.Printed printed) {
    private static final String NOT_STATED = "not stated";

    private record Line(String name, List<String> figures) {}

    /**
     * As text, in columns.
     *
     * @return lines, each ended by a line feed
     */
    public String text() {
        String unit = printed.unit().symbol();
        List<Line> grid = new ArrayList<>();
        grid.add(new Line("", List.of(unit + ",", unit + ",", "± " + unit + ", from", "± " + unit + ", of")));
        grid.add(new Line("part", List.of("all carcasses", "each", "one to another", "all carcasses")));
        grid.addAll(lines());
        int gap = grid.size();
        grid.add(new Line("where it all goes", List.of("", "", "", "")));
        grid.addAll(totalsByOutcome());
        return print(grid, gap);
    }

    /**
     * As comma-separated values.
     *
     * @return lines, each ended by a line feed
     */
    public String csv() {
        CsvBytes out = new CsvBytes();
        String unit = ", " + printed.unit().symbol();
        List.of(
                        "part",
                        "all carcasses" + unit,
                        "each" + unit,
                        "standard deviation from one to another" + unit,
                        "standard deviation of all carcasses" + unit)
                .forEach(out::word);
        out.endLine();
        List<Line> all = new ArrayList<>();
        for (int v = 0; v < plan.size(); v++) {
            all.add(new Line(RowWriter.name(plan.node(v)), figures(v)));
        }
        all.addAll(totals());
        for (Line line : all) {
            out.word(line.name().strip());
            line.figures().forEach(figure -> {
                if (figure.equals(NOT_STATED)) {
                    out.empty();
                } else {
                    out.word(figure);
                }
            });
            out.endLine();
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            out.writeTo(bytes);
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (int v = 0; v < plan.size(); v++) {
            lines.add(new Line("  ".repeat(plan.node(v).level()) + plan.node(v).name(), figures(v)));
        }
        return lines;
    }

    private List<String> figures(int v) {
        return plan.isStated(v) ? figures(sums.line(v)) : List.of(NOT_STATED, NOT_STATED, NOT_STATED, NOT_STATED);
    }

    /** What an outcome is made of stands under it, so that no line is added twice by whoever adds a column up. */
    private List<Line> totalsByOutcome() {
        List<Line> all = totals();
        List<BatchTotal> told = told();
        List<Line> lines = new ArrayList<>();
        for (int t = 0; t < told.size(); t++) {
            if (told.get(t) instanceof BatchTotal.OfOutcome of) {
                lines.add(all.get(t));
                for (int u = 0; u < told.size(); u++) {
                    if (isPartOf(told.get(u), of.outcome())) {
                        lines.add(new Line("  " + all.get(u).name(), all.get(u).figures()));
                    }
                }
            }
        }
        return lines;
    }

    private static boolean isPartOf(BatchTotal total, Outcome outcome) {
        return total instanceof BatchTotal.OfStream of && Outcome.of(of.stream().kind()) == outcome
                || total instanceof BatchTotal.Products && outcome == Outcome.SALEABLE;
    }

    /** An outcome that nothing has is told only where streams are meant for it. */
    private List<BatchTotal> told() {
        List<BatchTotal> told = new ArrayList<>();
        for (int t = 0; t < plan.totals().size(); t++) {
            BatchTotal total = plan.totals().get(t);
            boolean isTold = !(total instanceof BatchTotal.OfOutcome of)
                    || sums.total(t).sum() > 0
                    || plan.totals().stream().anyMatch(each -> isPartOf(each, of.outcome()));
            if (isTold) {
                told.add(total);
            }
        }
        return told;
    }

    private List<Line> totals() {
        List<Line> lines = new ArrayList<>();
        for (BatchTotal total : told()) {
            lines.add(new Line(
                    "  " + total.name(), figures(sums.total(plan.totals().indexOf(total)))));
        }
        return lines;
    }

    private List<String> figures(BatchFigure figure) {
        String each = sums.carcasses() > 0 ? shown(figure.mean(), 0) : NOT_STATED;
        return List.of(shown(figure.sum(), 0), each, spread(figure.between()), spread(figure.expected()));
    }

    /** One place finer than weights, since it is smaller. */
    private String spread(Spread spread) {
        return spread instanceof Spread.Stated stated ? shown(stated.standardDeviation(), 1) : NOT_STATED;
    }

    private String shown(double kilograms, int finer) {
        return new BigDecimal(kilograms / printed.unit().factor().doubleValue())
                .setScale(printed.decimals() + finer, RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    private static String print(List<Line> grid, int emptyBefore) {
        int[] widths = new int[5];
        for (Line line : grid) {
            widths[0] = Math.max(widths[0], width(line.name()));
            for (int c = 1; c < widths.length; c++) {
                widths[c] = Math.max(widths[c], width(line.figures().get(c - 1)));
            }
        }
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < grid.size(); i++) {
            out.append(i == emptyBefore ? "\n" : "");
            StringBuilder line = new StringBuilder(grid.get(i).name());
            line.append(" ".repeat(widths[0] - width(grid.get(i).name())));
            for (int c = 1; c < widths.length; c++) {
                String figure = grid.get(i).figures().get(c - 1);
                line.append("  ").append(" ".repeat(widths[c] - width(figure))).append(figure);
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
        return out.toString();
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
