package dev.gambrel.batches.sheets;

import dev.gambrel.batches.sheets.SheetRow.Cell;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.FirstFindings;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.cuttingtest.PartPrice;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What the parts of a specification fetch.
 *
 * <pre>
 * currency,crowns
 * part,price,unit
 * leg / topside trimmed,14.20,kg
 * shoulder,9.80,kg
 * </pre>
 *
 * <p>Parts are named as on a weigh sheet. Prices are kept exactly, with a point before the decimals and nothing between thousands, for one
 * kilogram each. Immutable.
 *
 * @param currency a word for it; empty if none is said
 * @param prices in the order of the list
 */
public record PriceList(String currency, List<PartPrice> prices) {
    /** No price of anything. */
    public static final PriceList NONE = new PriceList("", List.of());

    private static final String CURRENCY = "currency";
    private static final List<String> COLUMNS = List.of("part", "price", "unit");

    /** Copies the list. */
    public PriceList {
        prices = List.copyOf(prices);
    }

    /**
     * Reads a list. Everything that is wrong with it is told at once, each fault where it stands; a list with an error is not used.
     *
     * @param text the list as comma-separated values, or by semicolons where its first row has one
     * @param plan the specification as it was worked
     * @return the list, with what there is to ask about it
     */
    public static Result<PriceList> read(SourceText text, YieldPlan plan) {
        FirstFindings findings = new FirstFindings();
        Optional<PriceList> list = read(text, plan, findings);
        List<Diagnostic> found = findings.list();
        return Result.hasError(found) || list.isEmpty() ? Result.failed(found) : Result.of(list.get(), found);
    }

    private static Optional<PriceList> read(SourceText text, YieldPlan plan, Consumer<Diagnostic> findings) {
        List<SheetRow> rows = SheetRow.of(text, findings);
        int table = SheetColumns.table(rows);
        String currency = currency(rows.subList(0, table), findings);
        if (table == rows.size()) {
            findings.accept(Diagnostic.of(SheetCode.NO_TABLE, new Place.InFile(text.name()))
                    .help("Write above the prices: " + String.join(",", COLUMNS)));
            return Optional.empty();
        }
        return SheetColumns.of(rows.get(table), COLUMNS, List.of(), findings).map(columns -> {
            PriceRowReader reader = new PriceRowReader(columns, plan, findings);
            return new PriceList(
                    currency,
                    rows.subList(table + 1, rows.size()).stream()
                            .flatMap(row -> reader.read(row).stream())
                            .toList());
        });
    }

    private static String currency(List<SheetRow> heading, Consumer<Diagnostic> findings) {
        String currency = "";
        Optional<Place> first = Optional.empty();
        for (SheetRow row : heading) {
            if (!row.cell(0).written().toLowerCase(Locale.ROOT).equals(CURRENCY)) {
                findings.accept(Diagnostic.of(
                                PriceCode.UNKNOWN_LINE, row.cell(0).place())
                        .with("word", row.cell(0).written())
                        .help("Above the table may stand the currency, such as currency,crowns; the table begins with"
                                + " “part”."));
            } else if (first.isPresent()) {
                findings.accept(Diagnostic.of(SheetCode.LINE_TWICE, row.place())
                        .with("what", "the currency")
                        .related(first.get(), "the first")
                        .help("Leave one of the two."));
            } else {
                first = Optional.of(row.place());
                currency = currency(row.cell(1), findings);
            }
        }
        return currency;
    }

    private static String currency(Cell cell, Consumer<Diagnostic> findings) {
        if (!TradeName.isAcceptable(cell.written())) {
            findings.accept(Diagnostic.of(SheetCode.LINE_UNREADABLE, cell.place())
                    .with("line", CURRENCY)
                    .with("value", cell.written())
                    .with("wanted", "a word such as crowns"));
        }
        return cell.written();
    }
}
