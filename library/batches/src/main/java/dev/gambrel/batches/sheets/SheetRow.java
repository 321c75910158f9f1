package dev.gambrel.batches.sheets;

import dev.gambrel.batches.csv.Cells;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * One row of a sheet. Empty cells at its end are left out: spreadsheets fill rows up with them.
 *
 * @param place where it stands
 * @param cells with their places
 */
record SheetRow(Place place, List<Cell> cells) {
    private static final int MOST_CELLS = 64;

    /**
     * What stands in a cell.
     *
     * @param written without blanks around it
     * @param place its words; of an empty one its row
     */
    record Cell(String written, Place place) {
        boolean isEmpty() {
            return written.isEmpty();
        }
    }

    SheetRow {
        cells = List.copyOf(cells);
    }

    /** The rows of a text, empty ones left out. Cells stand apart by semicolons where the first row has one. */
    static List<SheetRow> of(SourceText text, Consumer<Diagnostic> findings) {
        char[] characters = text.text().toCharArray();
        Cells cells = new Cells(separator(text), MOST_CELLS);
        List<SheetRow> rows = new ArrayList<>();
        for (int line = 1; line <= text.lineCount(); line++) {
            Span span = text.line(line);
            Place.InText place = new Place.InText(text, span);
            if (!cells.split(characters, span.start(), span.end())) {
                findings.accept(Diagnostic.of(SheetCode.QUOTES, place)
                        .help("Close the quotation mark, and double one that stands inside."));
                continue;
            }
            SheetRow row = of(place, cells, characters);
            if (!row.cells().isEmpty()) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static char separator(SourceText text) {
        for (int line = 1; line <= text.lineCount(); line++) {
            String first = text.slice(text.line(line));
            if (!first.isBlank()) {
                return first.indexOf(';') >= 0 ? ';' : ',';
            }
        }
        return ',';
    }

    private static SheetRow of(Place.InText row, Cells cells, char[] characters) {
        List<Cell> found = new ArrayList<>();
        for (int c = 0; c < Math.min(MOST_CELLS, cells.count()); c++) {
            String written = cells.string(c).strip();
            boolean isInPlace = cells.text(c) == characters && !written.isEmpty();
            found.add(new Cell(written, isInPlace ? stripped(row.text(), cells.begin(c), cells.end(c)) : (Place) row));
        }
        while (!found.isEmpty() && found.get(found.size() - 1).isEmpty()) {
            found.remove(found.size() - 1);
        }
        return new SheetRow(row, found);
    }

    private static Place stripped(SourceText text, int begin, int end) {
        String cell = text.slice(new Span(begin, end));
        int from = begin + cell.length() - cell.stripLeading().length();
        return new Place.InText(text, new Span(from, from + cell.strip().length()));
    }

    /** A cell; an empty one, at the place of the row, where there is none. */
    Cell cell(int column) {
        return column >= 0 && column < cells.size() ? cells.get(column) : new Cell("", place);
    }
}
