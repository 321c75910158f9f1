package dev.gambrel.batches.sheets;

import dev.gambrel.batches.sheets.SheetRow.Cell;
import dev.gambrel.diagnostic.Diagnostic;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Which column of the table holds what. */
final class SheetColumns {
    private static final String PART = "part";
    private static final List<String> NEEDED = List.of(PART, "pieces", "gross", "tare", "unit");
    private static final List<String> MORE = List.of("scale", "weighings");
    /** All that are read, part first. */
    static final List<String> NAMES =
            Stream.concat(NEEDED.stream(), MORE.stream()).toList();

    private static final int NONE = -1;

    private final Map<String, Integer> columns;
    private final int count;

    private SheetColumns(Map<String, Integer> columns, int count) {
        this.columns = Map.copyOf(columns);
        this.count = count;
    }

    /** Whether a row names the columns. */
    static boolean isHere(SheetRow row) {
        return row.cell(0).written().equalsIgnoreCase(PART);
    }

    /** Where the row that names the columns stands; how many rows there are if none does. */
    static int table(List<SheetRow> rows) {
        int at = 0;
        while (at < rows.size() && !isHere(rows.get(at))) {
            at++;
        }
        return at;
    }

    /** The columns of a weigh sheet that a row names; nothing, and why, if some lack. */
    static Optional<SheetColumns> of(SheetRow row, Consumer<Diagnostic> findings) {
        return of(row, NEEDED, MORE, findings);
    }

    /** The columns that a row names; nothing, and why, if some lack that are needed. */
    static Optional<SheetColumns> of(
            SheetRow row, List<String> needed, List<String> more, Consumer<Diagnostic> findings) {
        List<String> read = Stream.concat(needed.stream(), more.stream()).toList();
        Map<String, Integer> columns = new HashMap<>();
        for (int c = 0; c < row.cells().size(); c++) {
            Cell cell = row.cell(c);
            String name = cell.written().toLowerCase(Locale.ROOT);
            if (!read.contains(name)) {
                findings.accept(Diagnostic.of(SheetCode.COLUMN_NOT_READ, cell.place())
                        .with("column", cell.written())
                        .help("Columns that are read: " + String.join(", ", read) + "."));
            } else if (columns.putIfAbsent(name, c) != null) {
                findings.accept(Diagnostic.of(SheetCode.COLUMN_TWICE, cell.place())
                        .with("column", name)
                        .help("Leave one of the two."));
            }
        }
        List<String> missing =
                needed.stream().filter(name -> !columns.containsKey(name)).toList();
        missing.forEach(name -> findings.accept(Diagnostic.of(SheetCode.NO_COLUMN, row.place())
                .with("column", name)
                .help("Head the table: " + String.join(",", needed))));
        return missing.isEmpty()
                ? Optional.of(new SheetColumns(columns, row.cells().size()))
                : Optional.empty();
    }

    /** Whether a row has no more cells than there are columns; told if it has. */
    boolean hold(SheetRow row, Consumer<Diagnostic> findings) {
        boolean fits = row.cells().size() <= count;
        if (!fits) {
            findings.accept(Diagnostic.of(SheetCode.CELLS, row.place())
                    .with("found", row.cells().size())
                    .with("wanted", count)
                    .help("Write figures with a point, not a comma; what has a comma in it goes in quotation marks."));
        }
        return fits;
    }

    private Cell cell(SheetRow row, String name) {
        return row.cell(columns.getOrDefault(name, NONE));
    }

    Cell part(SheetRow row) {
        return cell(row, PART);
    }

    Cell pieces(SheetRow row) {
        return cell(row, "pieces");
    }

    Cell gross(SheetRow row) {
        return cell(row, "gross");
    }

    Cell tare(SheetRow row) {
        return cell(row, "tare");
    }

    Cell unit(SheetRow row) {
        return cell(row, "unit");
    }

    Cell scale(SheetRow row) {
        return cell(row, "scale");
    }

    Cell price(SheetRow row) {
        return cell(row, "price");
    }

    Cell weighings(SheetRow row) {
        return cell(row, "weighings");
    }
}
