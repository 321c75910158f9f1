package dev.gambrel.benchmarks;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.estimate.Measurements;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** What is compared gives the same figures. */
class HandLoopTest {
    private static final DrawnCarcasses CARCASSES = DrawnCarcasses.of(50);

    @Test
    void fixed_shares_give_what_the_library_gives() {
        Yields yields = Yields.of(Sheet.of(150).tree());
        FlatSheet flat = FlatSheet.of(yields.forTypicalCarcass().orElseThrow());
        double[] expected = new double[flat.size()];
        for (double w : CARCASSES.kilograms()) {
            addMeans(yields.forCarcass(weight(w)).orElseThrow(), expected);
        }
        double[] totals = new double[flat.size()];
        new HandLoop(flat).totals(CARCASSES.kilograms(), totals);
        assertArrayEquals(expected, totals, 1e-9);
        double[] weights = new double[flat.size() * CARCASSES.count()];
        new HandLoop(flat).keep(CARCASSES.kilograms(), weights);
        assertArrayEquals(expected, columnSums(weights, flat.size()), 1e-9);
    }

    @Test
    void estimated_shares_give_what_the_library_gives() {
        Yields yields = Yields.of(EstimatedSheet.of(150));
        FlatSheet flat = EstimatedSheet.flat(150);
        double[] expected = new double[flat.size()];
        for (int r = 0; r < CARCASSES.count(); r++) {
            addMeans(yields(yields, r), expected);
        }
        double[] totals = new double[flat.size()];
        new HandLoop(flat).totals(CARCASSES, totals);
        assertArrayEquals(expected, totals, 1e-9);
        double[] weights = new double[flat.size() * CARCASSES.count()];
        new HandLoop(flat).keep(CARCASSES, weights);
        assertArrayEquals(expected, columnSums(weights, flat.size()), 1e-9);
    }

    @Test
    void the_workbook_gives_what_the_loop_gives() {
        FlatSheet flat =
                FlatSheet.of(Yields.of(Sheet.of(150).tree()).forTypicalCarcass().orElseThrow());
        double[] expected = new double[flat.size()];
        new HandLoop(flat).totals(CARCASSES.kilograms(), expected);
        double[] totals = new double[flat.size()];
        try (Spreadsheet workbook = new Spreadsheet(flat)) {
            for (double w : CARCASSES.kilograms()) {
                workbook.totals(w, totals);
            }
        }
        assertArrayEquals(expected, totals, 1e-9);
    }

    @Test
    void the_sheet_with_estimates_has_as_many_parts() {
        CutTree fixed = Sheet.of(150).tree();
        assertEquals(fixed.parts().size(), EstimatedSheet.of(150).parts().size());
    }

    static ExpectedYields yields(Yields yields, int r) {
        Measurements measured = Measurements.NONE.with(
                TradeName.of("back fat"),
                new Quantity(BigDecimal.valueOf(CARCASSES.backFat()[r]), Unit.MILLIMETRE));
        return yields.forCarcass(weight(CARCASSES.kilograms()[r]), measured).orElseThrow();
    }

    private static CarcassWeight weight(double kilograms) {
        return new CarcassWeight(new Quantity(BigDecimal.valueOf(kilograms), Unit.KILOGRAM), Basis.COLD);
    }

    private static void addMeans(ExpectedYields yields, double[] sums) {
        for (int v = 0; v < sums.length; v++) {
            sums[v] += yields.rows().get(v).allPieces().orElseThrow().mean();
        }
    }

    private static double[] columnSums(double[] weights, int columns) {
        double[] sums = new double[columns];
        for (int i = 0; i < weights.length; i++) {
            sums[i % columns] += weights[i];
        }
        return sums;
    }
}
