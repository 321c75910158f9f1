package dev.gambrel.yields.table;

import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.portions.MeanDoubt;
import dev.gambrel.yields.portions.NumberOfPortions;
import dev.gambrel.yields.portions.PortionYield;
import dev.gambrel.yields.portions.Promise;
import dev.gambrel.yields.working.Pairs;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;

/** The lines of what can be promised from several carcasses. */
final class PromiseLines {
    private static final String MEANS_UNCOUNTED = """
            Not counted: that carcasses weigh more and less, and that the mean shares may be off. Promise fewer where either may be.
            """;
    private static final String WEIGHTS_UNCOUNTED = """
            Counted: that the mean shares may be off, as far as cutting tests leave it open. Not counted: that carcasses weigh more and less.
            """;
    /** A promise is never said to be surer than it was asked to be, and no double tells more digits of it. */
    private static final MathContext AS_WRITTEN = new MathContext(14);

    private final Promise promise;
    private final List<PortionYield> portions;

    private PromiseLines(Promise promise, List<PortionYield> portions) {
        this.promise = promise;
        this.portions = portions;
    }

    static void print(List<Promise> promises, ExpectedYields yields, Figures figures, StringBuilder out) {
        if (promises.isEmpty()) {
            return;
        }
        List<PortionYield> portions = PortionYield.of(yields);
        if (portions.isEmpty()) {
            out.append("\nNothing is portioned, so there is no number to promise.\n");
            return;
        }
        promises.forEach(promise -> new PromiseLines(promise, portions).print(out));
        out.append("Each carcass is taken to weigh ")
                .append(figures.shown(yields.given().mass().value()))
                .append(' ')
                .append(figures.unit().symbol())
                .append(", and each varies by itself.\n");
        out.append(yields.pairs().equals(Pairs.ALIKE) ? "The pieces of one carcass are taken as alike.\n" : "");
        boolean isMeanCounted =
                promises.stream().noneMatch(p -> p.from().doubt().equals(MeanDoubt.NONE));
        out.append(isMeanCounted ? WEIGHTS_UNCOUNTED : MEANS_UNCOUNTED);
    }

    private void print(StringBuilder out) {
        TextGrid grid = new TextGrid();
        grid.add("from " + from(), "expected", "±", sure(), "");
        for (PortionYield portion : portions) {
            Optional<NumberOfPortions> number = portion.numberFrom(promise.from());
            grid.add(
                    PortionLines.name(portion),
                    number.map(n -> oneDecimal(n.expected())).orElse(Line.NOT_STATED),
                    number.map(n -> oneDecimal(n.deviation())).orElse(Line.NOT_STATED),
                    promised(portion),
                    "");
        }
        grid.print(out.append('\n'));
    }

    private String from() {
        int number = promise.from().number();
        return number + (number == 1 ? " carcass" : " carcasses");
    }

    private String sure() {
        return new BigDecimal(100 * promise.certainty())
                        .round(AS_WRITTEN)
                        .stripTrailingZeros()
                        .toPlainString() + " % sure";
    }

    private String promised(PortionYield portion) {
        OptionalLong number = portion.promised(promise);
        return number.isPresent() ? Long.toString(number.getAsLong()) : Line.NOT_STATED;
    }

    private static String oneDecimal(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }

    /** As lines of comma-separated values: the pieces are the portions promised. */
    static List<Line> rows(List<Promise> promises, List<PortionYield> portions) {
        List<Line> lines = new ArrayList<>();
        promises.forEach(promise -> new PromiseLines(promise, portions).add(lines));
        return lines;
    }

    private void add(List<Line> lines) {
        for (PortionYield portion : portions) {
            lines.add(new Line(
                    1,
                    portion.from().portion().name().text() + ": from " + from() + ", " + sure(),
                    portion.from().cut().toString(),
                    new Line.Weights(promised(portion), "", "", new Line.Spreading("", "", "")),
                    new Line.Shares("", ""),
                    ""));
        }
    }
}
