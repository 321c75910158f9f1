package dev.gambrel.cli.balance;

import dev.gambrel.batches.sheets.PriceList;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.cli.terminal.Grid;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.RoundedBalance;
import dev.gambrel.yields.cuttingtest.RoundedWorth;
import dev.gambrel.yields.cuttingtest.RoundedWorth.Money;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.cuttingtest.Worth;
import dev.gambrel.yields.cuttingtest.wording.PartNames;
import dev.gambrel.yields.cuttingtest.wording.Written;
import dev.gambrel.yields.figure.Estimate;
import java.util.List;
import java.util.Optional;

/** What a sheet is worth beside what it should be worth. */
final class WorthText {
    private static final int CENTS = 2;

    private final CuttingTest test;
    private final RoundedBalance weights;
    private final StringBuilder out = new StringBuilder();

    private WorthText(CuttingTest test, RoundedBalance weights) {
        this.test = test;
        this.weights = weights;
    }

    /** The table and what is not in it; nothing where nothing has a price. */
    static String of(SheetReport report, RoundedBalance weights, PriceList prices) {
        if (prices.prices().isEmpty()) {
            return "";
        }
        if (report.faults().verdict() == Verdict.DOES_NOT_BALANCE) {
            return "No worth is told of a sheet that does not balance: find what is wrong first.\n\n";
        }
        CuttingTest test = report.test();
        WorthText text = new WorthText(test, weights);
        Worth worth = Worth.of(test, prices.prices());
        text.table(worth, prices.currency());
        text.named("Valued whole, as they enter the block: ", wholes(worth));
        text.named("Prices not used, since what these are cut into or from is valued: ", worth.notUsed());
        text.named("Not valued, since their weight is not known: ", worth.notKnown());
        text.named("Without a price: ", worth.withoutPrice());
        return text.out.append('\n').toString();
    }

    private static List<Integer> wholes(Worth worth) {
        return worth.lines().stream()
                .filter(Worth.Line::isWhole)
                .map(Worth.Line::node)
                .toList();
    }

    private void table(Worth worth, String currency) {
        RoundedWorth shown = RoundedWorth.of(worth, CENTS);
        Grid grid = new Grid()
                .row(
                        currency.isEmpty() ? "Worth" : "Worth, in " + Visible.text(currency),
                        "per kg",
                        "kg",
                        "worth",
                        "expected",
                        "difference",
                        "1 sd");
        for (int i = 0; i < worth.lines().size(); i++) {
            Worth.Line line = worth.lines().get(i);
            String address = PartNames.address(test.plan(), line.node());
            String weight = weights.weight(line.node()).toPlainString();
            row(
                    grid,
                    address,
                    line.perKilogram().toPlainString(),
                    weight,
                    shown.lines().get(i),
                    line.difference());
        }
        row(grid, "in all", "", "", shown.whole(), worth.difference());
        out.append(grid.text());
    }

    private static void row(
            Grid grid, String name, String price, String weight, Money money, Optional<Estimate> difference) {
        grid.row(
                name,
                price,
                weight,
                money.actual().toPlainString(),
                money.isStated() ? money.expected().toPlainString() : Written.NOTHING,
                money.difference().map(Written::signed).orElse(Written.NOTHING),
                difference
                        .map(more -> Written.deviation(more.spread().variance(), CENTS))
                        .orElse(""));
    }

    private void named(String words, List<Integer> nodes) {
        if (!nodes.isEmpty()) {
            out.append(words).append(PartNames.all(test.plan(), nodes)).append(".\n");
        }
    }
}
