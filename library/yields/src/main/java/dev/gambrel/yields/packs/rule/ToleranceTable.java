package dev.gambrel.yields.packs.rule;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.util.List;
import java.util.Optional;

/**
 * A published table of tolerances by nominal size.
 *
 * <p>A size between two printed rows, such as 12.005 oz between "6.00 to 12.00" and "12.01 to 24.00", belongs to the later.
 *
 * @param name what it is called in a sentence
 * @param units the units of a label that it is for
 * @param from the least size that it holds for
 * @param rows in order of size
 */
public record ToleranceTable(String name, List<Unit> units, Quantity from, List<ToleranceRow> rows) {
    /** Copies the lists. */
    public ToleranceTable {
        units = List.copyOf(units);
        rows = List.copyOf(rows);
    }

    /**
     * The tolerance for a nominal size.
     *
     * @param nominal a size in one of the table's units
     * @return the tolerance, or nothing where the table says nothing of such a size
     */
    public Optional<Tolerance> at(Quantity nominal) {
        if (!units.contains(nominal.unit()) || nominal.compareTo(from) < 0) {
            return Optional.empty();
        }
        return rows.stream()
                .filter(row -> row.end().reaches(nominal))
                .findFirst()
                .map(row -> new Tolerance(nominal, row.allowed().of(nominal), row.citation()));
    }

    /**
     * The sizes that it holds for, in words.
     *
     * @return for example "5 g to 10 kg"
     */
    public String extent() {
        ToleranceRow.End last = rows.get(rows.size() - 1).end();
        if (last instanceof ToleranceRow.End.At at) {
            return from + " to " + at.size();
        }
        return last instanceof ToleranceRow.End.Before before
                ? from + " to under " + before.size()
                : from + " and more";
    }
}
