package dev.gambrel.batches.sheets;

import dev.gambrel.batches.sheets.SheetRow.Cell;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** Reads weights as they stand in the cells of a sheet: with a point before the decimals and nothing between thousands. */
final class WrittenWeight {
    private static final Pattern FIGURE = Pattern.compile("[0-9]{1,12}(\\.[0-9]{1,12})?");
    private static final Pattern TWO_WAYS = Pattern.compile(
            "[0-9]{1,12}(,[0-9]{1,12})|[0-9]{1,3}([ '.\u00a0\u2009\u202f\u2019,][0-9]{3})+([.,][0-9]{1,12})?");

    private final Consumer<Diagnostic> findings;

    WrittenWeight(Consumer<Diagnostic> findings) {
        this.findings = findings;
    }

    /** A figure of 0 or more; nothing, and why, if the cell holds none. */
    Optional<BigDecimal> figure(Cell cell, String column) {
        String written = cell.written();
        if (FIGURE.matcher(written).matches()) {
            return Optional.of(new BigDecimal(written));
        }
        findings.accept(why(cell, column));
        return Optional.empty();
    }

    private static Diagnostic why(Cell cell, String column) {
        String written = cell.written();
        if (cell.isEmpty()) {
            return Diagnostic.of(SheetCode.EMPTY, cell.place())
                    .with("column", column)
                    .help("Write what the scale showed, 0 for a tare of nothing; or take the row out.");
        } else if (TWO_WAYS.matcher(written).matches()) {
            return Diagnostic.of(SheetCode.UNCLEAR, cell.place())
                    .with("column", column)
                    .with("value", written)
                    .with("one", withPoint(written))
                    .with("other", digits(written))
                    .help("Write it with a point before the decimals and nothing between thousands.");
        } else if (isNegative(written)) {
            return Diagnostic.of(SheetCode.NEGATIVE, cell.place())
                    .with("column", column)
                    .with("value", written)
                    .help("Look whether the scale was tared with something else on it, and weigh again.");
        }
        return Diagnostic.of(SheetCode.NOT_A_FIGURE, cell.place())
                .with("column", column)
                .with("value", written)
                .help("Write the figure alone, such as 4.020, and the unit in its own column.");
    }

    static boolean isNegative(String written) {
        boolean signed = written.startsWith("-") || written.startsWith("\u2212");
        return signed && FIGURE.matcher(written.substring(1).strip()).matches();
    }

    private static String digits(String written) {
        return written.replaceAll("[^0-9]", "");
    }

    private static String withPoint(String written) {
        int mark = written.length() - 1;
        while (Character.isDigit(written.charAt(mark))) {
            mark--;
        }
        return digits(written.substring(0, mark)) + "." + written.substring(mark + 1);
    }

    /** The unit of a cell; nothing, and why, if it holds none of weight. */
    Optional<Unit> unit(Cell cell) {
        if (cell.isEmpty()) {
            findings.accept(Diagnostic.of(SheetCode.NO_UNIT, cell.place())
                    .help("Write kg, g, lb or oz in the column unit; none is taken for granted."));
            return Optional.empty();
        }
        Optional<Unit> unit = ofWeight(cell.written());
        if (unit.isEmpty()) {
            findings.accept(Diagnostic.of(SheetCode.OTHER_UNIT, cell.place())
                    .with("unit", cell.written())
                    .help("Write kg, g, lb or oz."));
        }
        return unit;
    }

    /** A figure with its unit in one cell, such as "5 g"; nothing if it is none. */
    static Optional<Quantity> whole(String written) {
        int letters = 0;
        while (letters < written.length() && !Character.isLetter(written.charAt(letters))) {
            letters++;
        }
        String figure = written.substring(0, letters).strip();
        return FIGURE.matcher(figure).matches()
                ? ofWeight(written.substring(letters)).map(unit -> new Quantity(new BigDecimal(figure), unit))
                : Optional.empty();
    }

    private static Optional<Unit> ofWeight(String written) {
        return Unit.of(written).filter(unit -> unit.dimension() == Dimension.WEIGHT);
    }
}
