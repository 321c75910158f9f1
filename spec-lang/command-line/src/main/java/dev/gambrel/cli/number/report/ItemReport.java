package dev.gambrel.cli.number.report;

import dev.gambrel.cli.number.report.NumberReport.Row;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.references.item.Item;
import dev.gambrel.references.item.Reference;
import dev.gambrel.references.ranges.PieceRange;
import dev.gambrel.references.ranges.Placement;
import dev.gambrel.references.ranges.RangeTable;
import dev.gambrel.references.source.Citation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the number of an item means, its weight ranges, and in which of them a piece lies. */
public final class ItemReport {
    private static final String CAUTION =
            "A published range is no law: what was agreed with the buyer, and the law on weights where it is sold, come first.";

    private final List<Row> rows = new ArrayList<>();
    private final List<Citation> sources = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private ItemReport() {}

    /**
     * What a number means.
     *
     * @param reference the number
     * @param items what it means, one for each edition or animal
     * @param tables its weight ranges, one for each edition
     * @param pieces what pieces weigh, where that is asked
     * @return a row for each meaning, each range and each place of the piece
     */
    public static NumberReport of(
            Reference reference, List<Item> items, List<RangeTable> tables, List<Quantity> pieces) {
        ItemReport report = new ItemReport();
        items.forEach(report::item);
        tables.forEach(report::ranges);
        pieces.forEach(weight -> tables.forEach(table -> report.piece(table, weight)));
        return new NumberReport(
                "published number",
                reference.toString(),
                report.rows,
                report.notes,
                report.sources,
                tables.isEmpty() ? "" : CAUTION);
    }

    static String words(Item item) {
        boolean isSaid = item.name()
                .toLowerCase(Locale.ROOT)
                .replace('-', ' ')
                .contains(item.bone().words());
        return isSaid ? item.name() : item.name() + ", " + item.bone().words();
    }

    private void item(Item item) {
        String edition = item.citation().edition();
        rows.add(new Row(
                edition, "cut of " + item.animal().word(), item.numbers().toString(), words(item)));
        if (!item.definition().isEmpty()) {
            rows.add(new Row(edition, "limits of it", item.numbers().toString(), item.definition()));
        }
        sources.add(item.citation());
    }

    private void ranges(RangeTable table) {
        for (PieceRange range : table.ranges()) {
            rows.add(new Row(
                    table.citation().edition(),
                    "weight range",
                    range.name(),
                    range.bounds().toString()));
        }
        sources.add(table.citation());
        if (!table.note().isEmpty()) {
            notes.add(table.number() + ", " + table.citation().edition() + ": " + table.note() + ".");
        }
    }

    private void piece(RangeTable table, Quantity weight) {
        rows.add(new Row(table.citation().edition(), "a piece", weight.toString(), place(table.place(weight))));
        if (table.place(weight) instanceof Placement.In in && in.isOnEdge()) {
            notes.add(RangeTable.EDGE_RULE);
        }
    }

    private static String place(Placement placement) {
        return placement instanceof Placement.In in
                ? "in " + in.range().name() + (in.isOnEdge() ? ", on the edge" : "")
                : "in none of them";
    }
}
