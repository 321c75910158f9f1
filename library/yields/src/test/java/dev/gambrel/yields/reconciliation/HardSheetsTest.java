package dev.gambrel.yields.reconciliation;

import static dev.gambrel.yields.reconciliation.ReconciliationLaws.variance;
import static dev.gambrel.yields.reconciliation.ReconciliationLaws.weight;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HardSheetsTest {
    private static final MassTree LEG = MassTree.of(-1, 0, 0);

    @Test
    void exactReadingsThatContradictEachOtherAreTold() {
        Reconciliation sheet = Reconciliation.of(
                LEG, Readings.none(3).with(0, 5, 0).with(1, 4, 0).with(2, 1.5, 0));
        assertEquals(0.5, sheet.contradictions().get(0).excess().mean());
        assertEquals(0, sheet.contradictions().get(0).cut());
        assertEquals(5.5, weight(sheet, 0));
        assertInstanceOf(ReadingTest.SetAside.class, sheet.reading(0));
        assertEquals(0, sheet.test().degreesOfFreedom());
        assertEquals(1, sheet.test().probability());
    }

    @Test
    void exactReadingsThatDifferByRoundingAloneDoNotContradictEachOther() {
        Reconciliation sheet = Reconciliation.of(
                LEG, Readings.none(3).with(0, 0.3, 0).with(1, 0.1, 0).with(2, 0.2, 0));
        assertEquals(List.of(), sheet.contradictions());
    }

    @Test
    void anExactReadingIsTestedLikeAnyOther() {
        Reconciliation sheet = Reconciliation.of(
                LEG, Readings.none(3).with(0, 5, 0).with(1, 4, 0.0001).with(2, 1.05, 0.0001));
        ReadingTest.Checked checked = assertInstanceOf(ReadingTest.Checked.class, sheet.reading(0));
        assertEquals(-0.05, checked.error().mean(), 1e-15);
        assertEquals(Math.sqrt(sheet.test().chiSquare()), -checked.z(), 1e-12);
    }

    @Test
    void aWeightBelowNothingIsShownAndNotHidden() {
        Reconciliation sheet =
                Reconciliation.of(LEG, Readings.none(3).with(0, 5, 0.0001).with(1, 5.4, 0.0001));
        assertEquals(List.of(2), sheet.negative());
        assertEquals(-0.4, weight(sheet, 2), 1e-12);
    }

    @Test
    void nothingIsKnownWhereNothingWasWeighed() {
        Reconciliation sheet = Reconciliation.of(LEG, Readings.none(3).with(1, 4, 0.0001));
        assertInstanceOf(Reconciled.NotKnown.class, sheet.weight(0));
        assertInstanceOf(Reconciled.NotKnown.class, sheet.weight(2));
        assertEquals(4, weight(sheet, 1));
        assertTrue(sheet.covarianceWithAbove(1).isEmpty());
    }

    /** A tonne from a crane scale that shows 5 kg, cut down to a gram from a balance that shows 10 mg. */
    @Test
    void aGramBalancesUnderATonne() {
        MassTree tree = MassTree.of(-1, 0, 0, 1, 1);
        Reconciliation sheet = Reconciliation.of(
                tree,
                Readings.none(5)
                        .with(0, 1000, 25 / 12.0)
                        .with(2, 999.9, 1e-4)
                        .with(3, 0.001, 1e-10 / 12)
                        .with(4, 0.0995, 1e-8));
        assertEquals(weight(sheet, 0), weight(sheet, 1) + weight(sheet, 2), 1e-12 * 1000);
        assertEquals(weight(sheet, 1), weight(sheet, 3) + weight(sheet, 4), 1e-12 * 0.1);
        assertEquals(0.001, weight(sheet, 3), 1e-8);
        assertEquals(1e-10 / 12, variance(sheet, 3), 1e-15);
    }

    @Test
    void aCutOfFiftyThousandPartsBalances() {
        int n = 50_000;
        int[] above = new int[n];
        above[0] = -1;
        double[] reading = new double[n];
        double[] error = new double[n];
        Arrays.fill(reading, 0.1);
        Arrays.fill(error, 1e-6);
        reading[0] = 0.1 * (n - 1);
        Reconciliation sheet = Reconciliation.of(MassTree.of(above), Readings.of(reading, error));
        assertEquals(0.1, weight(sheet, 7), 1e-13);
        assertEquals(0, sheet.test().chiSquare(), 1e-12);
    }

    @Test
    void aHundredCutsBelowOneAnotherBalance() {
        int[] above = IntStream.range(-1, 100).toArray();
        double[] reading = new double[101];
        double[] error = new double[101];
        Arrays.setAll(reading, v -> 5 + (v % 2 == 0 ? 0.01 : -0.01));
        Arrays.fill(error, 1e-4);
        Reconciliation sheet = Reconciliation.of(MassTree.of(above), Readings.of(reading, error));
        double mean = Arrays.stream(reading).average().orElseThrow();
        for (int v = 0; v <= 100; v++) {
            assertEquals(mean, weight(sheet, v), 1e-12);
            assertEquals(1e-4 / 101, variance(sheet, v), 1e-15);
        }
        assertEquals(100, sheet.test().degreesOfFreedom());
    }

    @Test
    void whatCannotBeAReadingIsRefused() {
        Readings none = Readings.none(2);
        assertThrows(IllegalArgumentException.class, () -> none.with(0, Double.POSITIVE_INFINITY, 1));
        assertThrows(IllegalArgumentException.class, () -> none.with(0, 1, -1));
        assertThrows(IllegalArgumentException.class, () -> none.with(0, 1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> none.with(0, Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> Reconciliation.of(LEG, none));
        assertThrows(IllegalArgumentException.class, () -> MassTree.of(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> MassTree.of(-1, -1));
        assertThrows(IllegalArgumentException.class, MassTree::of);
    }
}
