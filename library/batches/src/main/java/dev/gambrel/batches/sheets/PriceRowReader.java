package dev.gambrel.batches.sheets;

import dev.gambrel.batches.sheets.SheetRow.Cell;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.cuttingtest.PartPrice;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads the rows of a list of prices, one part to each. */
final class PriceRowReader {
    private final SheetColumns columns;
    private final YieldPlan plan;
    private final PlanParts parts;
    private final WrittenWeight figures;
    private final Consumer<Diagnostic> findings;
    private final Map<Integer, Place> rows = new HashMap<>();

    PriceRowReader(SheetColumns columns, YieldPlan plan, Consumer<Diagnostic> findings) {
        this.columns = columns;
        this.plan = plan;
        this.parts = new PlanParts(plan, findings);
        this.figures = new WrittenWeight(findings);
        this.findings = findings;
    }

    /** The price of a row; nothing, and why, if something in it cannot be taken. */
    Optional<PartPrice> read(SheetRow row) {
        if (!columns.hold(row, findings)) {
            return Optional.empty();
        }
        Optional<PlanParts.Named> part = parts.find(columns.part(row))
                .filter(named -> canBeSold(named, row))
                .filter(named -> isFirst(named, row));
        Optional<BigDecimal> price = price(columns.price(row), columns.part(row));
        boolean isPerKilogram = isPerKilogram(columns.unit(row));
        return part.filter(named -> isPerKilogram)
                .flatMap(named ->
                        price.map(money -> new PartPrice(plan.node(named.node()).path(), named.state(), money)));
    }

    private boolean canBeSold(PlanParts.Named named, SheetRow row) {
        Node node = plan.node(named.node());
        boolean isLoss = node.kind() == Kind.LOSS;
        if (isLoss) {
            findings.accept(Diagnostic.of(PriceCode.OF_A_LOSS, columns.part(row).place())
                    .with("part", PlanParts.called(node))
                    .help("Take the row out; what a loss costs shows in what the other parts fetch."));
        }
        return !isLoss;
    }

    private boolean isFirst(PlanParts.Named named, SheetRow row) {
        Place first = rows.putIfAbsent(named.node(), columns.part(row).place());
        if (first != null) {
            findings.accept(
                    Diagnostic.of(SheetCode.PART_TWICE, columns.part(row).place())
                            .with("part", PlanParts.called(plan.node(named.node())))
                            .related(first, "the first row")
                            .help("Leave one of the two."));
        }
        return first == null;
    }

    private Optional<BigDecimal> price(Cell cell, Cell part) {
        if (cell.isEmpty()) {
            findings.accept(Diagnostic.of(PriceCode.NOT_GIVEN, part.place())
                    .with("part", part.written())
                    .help("Write what one kilogram fetches, 0 where it fetches nothing; or take the row out."));
            return Optional.empty();
        } else if (WrittenWeight.isNegative(cell.written())) {
            findings.accept(Diagnostic.of(PriceCode.NEGATIVE, cell.place())
                    .with("value", cell.written())
                    .help("Write 0 where a part fetches nothing. What it costs to send away is no price."));
            return Optional.empty();
        }
        return figures.figure(cell, "price");
    }

    /** Money for another unit is never changed into money for a kilogram: that would seldom be exact. */
    private boolean isPerKilogram(Cell cell) {
        Optional<Unit> unit = Unit.of(cell.written());
        boolean isKilogram = unit.isPresent() && unit.get() == Unit.KILOGRAM;
        if (!isKilogram) {
            findings.accept(Diagnostic.of(PriceCode.NOT_PER_KILOGRAM, cell.place())
                    .with("found", cell.isEmpty() ? "unit that is not said" : "“" + cell.written() + "”")
                    .help("Write the price of one kilogram, and kg in the column unit; one lb is 0.45359237 kg."));
        }
        return isKilogram;
    }
}
