package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.chill;
import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.kilograms;
import static dev.gambrel.yields.Sheet.portioned;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.row;
import static dev.gambrel.yields.Sheet.sd;
import static dev.gambrel.yields.Sheet.to;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.rules.TreeRules;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.table.YieldTable;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sheets that no rule forbids, however odd, are worked out and printed. */
class OddSheetsTest {
    static List<CutTree> oddSheets() {
        return List.of(
                hogget(),
                hogget(rest("mince")),
                hogget(cut("leg", "100"), rest("mince")),
                hogget(cut("leg", "0 ± 0", cut("topside", "40 ± 2"), rest("mince")), rest("diced")),
                hogget(cut("leg", "33 ± 1E-9000"), cut("loin", "67 ± 1E-9000")),
                hogget(cut("leg", "1E-9000 ± 0"), rest("mince")),
                hogget(cut("leg", "60 ± 1"), cut("loin", "40"), trim("glands", "", "waste")),
                hogget(cut("leg", "60 ± 1"), cut("loin", "40 ± 0.2"), trim("glands", "", "waste")),
                hogget(portioned(cut("leg", "60 ± 1"), "crumb", "1E-9000", to("diced")), rest("mince")),
                hogget(portioned(cut("leg", "60 ± 1"), "grain", "0.00001", to("diced")), rest("mince")),
                hogget(portioned(cut("leg", "0 ± 0"), "steak", "0.18", to("diced")), rest("mince")));
    }

    @ParameterizedTest
    @MethodSource("oddSheets")
    void every_sheet_that_keeps_the_rules_is_worked_out(CutTree tree) {
        assertFalse(Result.hasError(TreeRules.check(tree)));
        ExpectedYields yields = yields(tree, "22");
        double sum = 0;
        for (Outcome outcome : Outcome.values()) {
            sum += yields.total(outcome).mean();
        }
        assertEquals(22, sum, 22e-12);
        String text = YieldTable.of(yields, Unit.GRAM, 2).text();
        assertFalse(text.contains("NaN") || text.contains("nfinity"), text);
    }

    @Test
    void a_carcass_that_is_lost_in_the_chiller_is_all_loss() {
        ExpectedYields yields = Yields.of(hogget(List.of(chill("100")), cut("leg", "33"), rest("mince")))
                .forCarcass(kilograms("22", Basis.WARM))
                .orElseThrow();
        assertEquals(22, yields.total(Outcome.LOSS).mean());
        assertTrue(YieldTable.of(yields, Unit.KILOGRAM, 2).text().contains("\n  chill shrink"));
    }

    @Test
    void a_spread_of_more_than_the_whole_says_nothing() {
        ExpectedYields yields = yields(hogget(cut("leg", "33 ± 101"), rest("mince")), "22");
        assertEquals(
                Spread.NOT_STATED, row(yields, "leg").allPieces().orElseThrow().spread());
    }

    /** Two unequal spreads cannot close by themselves: the trim whose share nobody gave must take up the difference. */
    @Test
    void spreads_that_need_the_trim_to_close_leave_other_figures_unstated() {
        ExpectedYields yields =
                yields(hogget(cut("leg", "60 ± 1"), cut("loin", "40 ± 0.2"), trim("glands", "", "waste")), "100");
        assertEquals(1, sd(row(yields, "leg").allPieces().orElseThrow()), 1e-12);
        assertEquals(Spread.NOT_STATED, yields.total(Outcome.SALEABLE).spread());
    }
}
