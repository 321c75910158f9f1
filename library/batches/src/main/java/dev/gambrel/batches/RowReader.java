package dev.gambrel.batches;

import dev.gambrel.batches.csv.Cells;
import dev.gambrel.batches.csv.Chunk;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.yields.batch.Carcasses;
import java.util.List;

/** Reads rows into columns of figures. Belongs to one thread. */
final class RowReader {
    private static final double NOT_KNOWN = -1;

    private final Cells cells;
    private final int count;
    private final BatchLimits limits;
    private final ColumnReader weight;
    private final List<List<ColumnReader>> grades;
    private final List<List<ColumnReader>> readings;
    private final List<Integer> carried;

    RowReader(Sheet sheet, BatchOrder order) {
        limits = order.limits();
        count = sheet.heading().names().size();
        cells = new Cells(sheet.heading().separator(), count);
        weight = new ColumnReader(sheet.weight(), order.numbers());
        grades = readers(sheet.grades(), order);
        readings = readers(sheet.readings(), order);
        carried = sheet.carried();
    }

    private static List<List<ColumnReader>> readers(List<List<Column>> columns, BatchOrder order) {
        return columns.stream()
                .map(each -> each.stream()
                        .map(column -> new ColumnReader(column, order.numbers()))
                        .toList())
                .toList();
    }

    /** Reads a row into its place among the carcasses; false if it is refused. */
    boolean read(Chunk chunk, int row, Carcasses into) {
        boolean hasCells = !chunk.isTooLong(row)
                && cells.split(chunk.text(), chunk.begin(row), chunk.end(row))
                && cells.count() == count;
        if (!hasCells || !weight.read(cells) || Double.isNaN(weight.value())) {
            return false;
        }
        into.kilograms()[row] = weight.value();
        for (int k = 0; k < grades.size(); k++) {
            if (!grades.get(k).isEmpty()) {
                ColumnReader reader = grades.get(k).get(0);
                if (!reader.read(cells)) {
                    return false;
                }
                into.grades()[k][row] = (int) (Double.isNaN(reader.value()) ? NOT_KNOWN : reader.value());
            }
        }
        for (int k = 0; k < readings.size(); k++) {
            if (!readings.get(k).isEmpty()) {
                ColumnReader reader = readings.get(k).get(0);
                if (!reader.read(cells)) {
                    return false;
                }
                into.readings()[k][row] = reader.value();
            }
        }
        return !hasUnreadable();
    }

    private boolean hasUnreadable() {
        for (int i = 0; i < carried.size(); i++) {
            if (ColumnReader.isUnreadable(cells, carried.get(i))) {
                return true;
            }
        }
        return false;
    }

    /** Why a row is refused that could not be read. */
    Diagnostic finding(Chunk chunk, int row, Place place) {
        if (chunk.isTooLong(row)) {
            return Diagnostic.of(BatchCode.ROW_TOO_LONG, place)
                    .with("allowed", limits.rowCharacters())
                    .help("Look whether a line break is missing; of this row only the beginning is kept.");
        } else if (!cells.split(chunk.text(), chunk.begin(row), chunk.end(row))) {
            return Diagnostic.of(BatchCode.QUOTES, place)
                    .help(
                            "Close the quotation mark, and double one that stands inside; a cell may hold no line break.");
        } else if (cells.count() != count) {
            return Diagnostic.of(BatchCode.CELLS, place)
                    .with("found", cells.count())
                    .with("wanted", count)
                    .help(
                            "Put a figure with a decimal comma in quotation marks, or fill in the cells that are missing.");
        }
        if (!weight.read(cells)) {
            return weight.finding(cells, place);
        } else if (Double.isNaN(weight.value())) {
            return Diagnostic.of(BatchCode.NO_WEIGHT_GIVEN, place)
                    .with("column", weight.name())
                    .help("Write what the scale showed, or take the row out.");
        }
        return cell(place);
    }

    private Diagnostic cell(Place place) {
        for (List<List<ColumnReader>> columns : List.of(grades, readings)) {
            for (List<ColumnReader> column : columns) {
                if (!column.isEmpty() && !column.get(0).read(cells)) {
                    return column.get(0).finding(cells, place);
                }
            }
        }
        return Diagnostic.of(BatchCode.CHARACTERS, place)
                .with("column", "column that is carried through")
                .help("Save the file as UTF-8.");
    }
}
