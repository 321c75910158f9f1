package dev.gambrel.batches;

import dev.gambrel.batches.csv.Cells;
import dev.gambrel.batches.csv.Chunk;
import dev.gambrel.batches.csv.CsvBytes;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.batch.BatchWorker;
import dev.gambrel.yields.batch.Carcasses;
import dev.gambrel.yields.plan.Node;
import java.util.List;

/** Writes what a carcass gives. Belongs to one thread. */
final class RowWriter {
    private final BatchPlan plan;
    private final Each each;
    private final double perUnit;
    private final int decimals;
    private final String unit;
    private final List<Integer> carried;
    private final Heading heading;
    private final Cells cells;
    private final int columns;

    RowWriter(BatchPlan plan, BatchOrder order, Sheet sheet) {
        this.plan = plan;
        this.each = order.each();
        this.perUnit = order.printed().unit().factor().doubleValue();
        this.unit = order.printed().unit().symbol();
        this.decimals = order.printed().decimals();
        this.carried = sheet.carried();
        this.heading = sheet.heading();
        this.cells = new Cells(heading.separator(), heading.names().size());
        this.columns = switch (each) {
            case TOTALS -> plan.totals().size();
            case LINES -> plan.size();
            case NOTHING -> 0;
        };
    }

    /** How many weights there are of each carcass. */
    int columns() {
        return columns;
    }

    void heading(CsvBytes out) {
        if (each == Each.NOTHING) {
            return;
        }
        out.word("line");
        carried.forEach(column -> out.word(heading.names().get(column)));
        if (each == Each.TOTALS) {
            out.word("carcass, " + unit);
            plan.totals().forEach(total -> out.word(total.name() + ", " + unit));
        } else {
            for (int v = 0; v < columns; v++) {
                out.word(name(plan.node(v)) + ", " + unit);
            }
        }
        out.endLine();
    }

    static String name(Node node) {
        String path = node.path().toString();
        return switch (node.kind()) {
            case CARCASS -> node.name();
            case TRIMMED -> path + ", trimmed";
            default -> path;
        };
    }

    /** Works carcasses out, as far as they are to be written. */
    void work(BatchWorker worker, Carcasses carcasses, int rows, byte[] notes, double[] weights) {
        if (each == Each.LINES) {
            worker.weights(carcasses, 0, rows, notes, weights, 0);
        } else if (each == Each.TOTALS) {
            worker.totals(carcasses, 0, rows, notes, weights, 0);
        }
    }

    void write(Chunk chunk, int row, double kilograms, double[] weights, CsvBytes out) {
        if (each == Each.NOTHING) {
            return;
        }
        out.number(chunk.line(row));
        if (!carried.isEmpty()) {
            cells.split(chunk.text(), chunk.begin(row), chunk.end(row));
            for (int i = 0; i < carried.size(); i++) {
                int column = carried.get(i);
                out.word(cells.text(column), cells.begin(column), cells.end(column));
            }
        }
        if (each == Each.TOTALS) {
            out.figure(kilograms / perUnit, decimals);
        }
        for (int c = 0; c < columns; c++) {
            if (each == Each.LINES && !plan.isStated(c)) {
                out.empty();
            } else {
                out.figure(weights[row * columns + c] / perUnit, decimals);
            }
        }
        out.endLine();
    }
}
