package dev.gambrel.references.ranges;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.references.item.Scheme;
import dev.gambrel.references.source.Citation;
import java.util.ArrayList;
import java.util.List;

/** Reads lines of ranges: number, limits with blanks between, name, and a note if any. */
final class RangeLines {
    private static final int LIMITS = 1;
    private static final int NAME = 2;
    private static final int NOTE = 3;
    private static final String UP = "up";
    private static final String UNDER = "under";

    private final Scheme scheme;
    private final Unit unit;
    private final List<String> names;
    private final List<RangeTable> tables = new ArrayList<>();

    RangeLines(Scheme scheme, Unit unit, List<String> names) {
        this.scheme = scheme;
        this.unit = unit;
        this.names = names;
    }

    RangeLines of(Citation citation, String lines) {
        lines.lines().map(line -> line.split(" *\\| *")).forEach(cells -> {
            String note = cells.length > NOTE ? cells[NOTE] : "";
            tables.add(new RangeTable(scheme, cells[0], cells[NAME], ranges(cells[LIMITS]), note, citation));
        });
        return this;
    }

    List<RangeTable> tables() {
        return List.copyOf(tables);
    }

    private List<PieceRange> ranges(String written) {
        List<PieceRange> ranges = new ArrayList<>();
        for (String limits : written.split(" +")) {
            ranges.add(new PieceRange(names.get(ranges.size()), bounds(limits.split("-"))));
        }
        return ranges;
    }

    private Bounds bounds(String... ends) {
        if (ends[0].equals(UNDER)) {
            return new Bounds.Under(Quantity.of(ends[1], unit));
        }
        Quantity from = Quantity.of(ends[0], unit);
        return ends[1].equals(UP) ? new Bounds.Up(from) : new Bounds.Between(from, Quantity.of(ends[1], unit));
    }
}
