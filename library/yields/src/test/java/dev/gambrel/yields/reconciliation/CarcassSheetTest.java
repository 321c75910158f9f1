package dev.gambrel.yields.reconciliation;

import static dev.gambrel.yields.reconciliation.CarcassSheet.TREE;
import static dev.gambrel.yields.reconciliation.CarcassSheet.node;
import static dev.gambrel.yields.reconciliation.ReconciliationLaws.variance;
import static dev.gambrel.yields.reconciliation.ReconciliationLaws.weight;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Figures computed independently by dense least squares. */
class CarcassSheetTest {
    private static final Reconciliation SHEET = Reconciliation.of(TREE, CarcassSheet.readings());

    @Test
    void everyWeightIsKnownBetterThanItsOwnScaleKnewIt() {
        Map<String, Double> deviations = Map.ofEntries(
                Map.entry("carcass", 0.038147),
                Map.entry("fore", 0.026475),
                Map.entry("middle", 0.023338),
                Map.entry("hind", 0.020711),
                Map.entry("loss", 0.034235),
                Map.entry("shoulder", 0.018562),
                Map.entry("neck", 0.018562),
                Map.entry("breast", 0.018562),
                Map.entry("rack", 0.018335),
                Map.entry("loin", 0.018335),
                Map.entry("leg", 0.012594),
                Map.entry("chump", 0.018171),
                Map.entry("meat", 0.009181),
                Map.entry("bone", 0.009181),
                Map.entry("trim", 0.009181));
        deviations.forEach((name, sd) -> assertEquals(sd, Math.sqrt(variance(SHEET, node(name))), 1e-6, name));
    }

    @Test
    void theChiSquareIsTheSumOfOneIndependentDifferenceForEachCut() {
        assertEquals(2.6703866, SHEET.test().chiSquare(), 1e-6);
        assertEquals(5, SHEET.test().degreesOfFreedom());
        assertBalance("leg", -0.030000, -1.133893);
        assertBalance("hind", -0.037143, -0.670201);
        assertBalance("middle", 0.010000, 0.174078);
        assertBalance("fore", -0.030000, -0.493197);
        assertBalance("carcass", -0.062927, -0.813607);
    }

    private static void assertBalance(String cut, double excess, double z) {
        CutBalance balance = SHEET.balance(node(cut)).orElseThrow();
        assertEquals(excess, balance.excess().mean(), 1e-6, cut);
        assertEquals(z, balance.z(), 1e-6, cut);
    }

    @Test
    void ofTwoPartsThatWereNotWeighedOnlyTheSumIsKnown() {
        Reconciliation sheet = Reconciliation.of(
                TREE, CarcassSheet.readings().without(node("meat")).without(node("bone")));
        assertEquals(0.7686385, sheet.test().chiSquare(), 1e-6);
        assertEquals(4, sheet.test().degreesOfFreedom());
        Reconciled.OnlyTogether together = assertInstanceOf(Reconciled.OnlyTogether.class, sheet.weight(node("meat")));
        assertEquals(List.of(node("meat"), node("bone")), together.parts());
        assertEquals(weight(sheet, node("leg")) - 0.40, together.sum().mean(), 1e-12);
        assertEquals(5.044792, together.sum().mean(), 1e-6);
        assertEquals(
                variance(sheet, node("leg")) + 0.0001, together.sum().spread().variance(), 1e-15);
        assertInstanceOf(ReadingTest.NotChecked.class, sheet.reading(node("trim")));
    }

    @Test
    void aMissedPartIsWhatTheOthersLeave() {
        Reconciliation sheet = Reconciliation.of(TREE, CarcassSheet.readings().without(node("rack")));
        assertEquals(weight(sheet, node("middle")) - 2.80, weight(sheet, node("rack")), 1e-12);
        assertInstanceOf(ReadingTest.NotWeighed.class, sheet.reading(node("rack")));
        assertInstanceOf(ReadingTest.NotChecked.class, sheet.reading(node("loin")));
    }
}
