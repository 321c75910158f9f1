package dev.gambrel.batches;

import dev.gambrel.batches.csv.Cells;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;

/** Reads the cells of one column. Belongs to one thread. */
final class ColumnReader {
    private static final int SHOWN = 60;

    private final Column column;
    private final FigureReader figures;
    private final WordReader words;
    private final double[] numbers;
    private double value;
    private BatchCode wrong = BatchCode.NOT_A_FIGURE;

    ColumnReader(Column column, BatchOrder.Numbers how) {
        this.column = column;
        Column.Kind kind = column.kind();
        if (kind instanceof Column.Kind.Figures plain) {
            figures = new FigureReader(plain.dimension(), plain.headed(), how);
            words = new WordReader(List.of());
            numbers = new double[0];
        } else if (kind instanceof Column.Kind.Scores scores) {
            figures = new FigureReader(Dimension.NUMBER, List.of(Unit.NUMBER), how);
            words = new WordReader(scores.words());
            numbers = scores.numbers().stream()
                    .mapToDouble(BigDecimal::doubleValue)
                    .toArray();
        } else {
            figures = new FigureReader(Dimension.NUMBER, List.of(), how);
            words = new WordReader(((Column.Kind.Words) kind).words());
            numbers = new double[0];
        }
    }

    String name() {
        return column.name();
    }

    int at() {
        return column.at();
    }

    /** What was read last: a figure in the unit of comparison, or which of the words; NaN where the cell is empty. */
    double value() {
        return value;
    }

    /** Reads a cell; false if it holds something else. */
    boolean read(Cells cells) {
        char[] text = cells.text(at());
        int begin = cells.begin(at());
        int end = cells.end(at());
        return column.kind() instanceof Column.Kind.Figures ? readFigure(text, begin, end) : readWord(text, begin, end);
    }

    private boolean readFigure(char[] text, int begin, int end) {
        FigureReader.Found found = figures.read(text, begin, end);
        value = found == FigureReader.Found.FIGURE ? figures.value() : Double.NaN;
        switch (found) {
            case FIGURE, EMPTY -> {
                return true;
            }
            case UNCLEAR -> wrong = BatchCode.UNCLEAR;
            case NO_UNIT -> wrong = BatchCode.NO_UNIT;
            case OTHER_UNIT -> wrong = BatchCode.OTHER_UNIT;
            default -> wrong = BatchCode.NOT_A_FIGURE;
        }
        return false;
    }

    private boolean readWord(char[] text, int begin, int end) {
        int found = words.read(text, begin, end);
        if (found == WordReader.OTHER
                && numbers.length > 0
                && figures.read(text, begin, end) == FigureReader.Found.FIGURE) {
            value = figures.value();
            return true;
        }
        wrong = BatchCode.OTHER_WORD;
        value = found < 0 ? Double.NaN : numbers.length > 0 ? numbers[found] : found;
        return found != WordReader.OTHER;
    }

    /** Why the cell that was read last is refused. */
    Diagnostic finding(Cells cells, Place place) {
        String written = cells.string(at()).strip();
        if (written.indexOf('\uFFFD') >= 0) {
            return Diagnostic.of(BatchCode.CHARACTERS, place)
                    .with("column", column.name())
                    .help("Save the file as UTF-8.");
        }
        String shown = written.length() > SHOWN ? written.substring(0, SHOWN) + "…" : written;
        Diagnostic finding =
                Diagnostic.of(wrong, place).with("column", column.name()).with("value", shown);
        return switch (wrong) {
            case UNCLEAR ->
                finding.help(
                        "Write it with a point, or without the comma; or say that a comma stands before the decimals.");
            case NO_UNIT ->
                finding.help("Head the column with the unit in brackets, such as: " + column.name() + " (kg)");
            case OTHER_UNIT, OTHER_WORD ->
                finding.with("wanted", column.wanted()).help("Look whether the row has slipped a column.");
            default -> finding.help("Write digits with one point or comma before the decimals.");
        };
    }

    static boolean isUnreadable(Cells cells, int column) {
        char[] text = cells.text(column);
        for (int i = cells.begin(column); i < cells.end(column); i++) {
            if (text[i] == '\uFFFD') {
                return true;
            }
        }
        return false;
    }
}
