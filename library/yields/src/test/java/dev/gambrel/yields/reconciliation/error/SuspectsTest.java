package dev.gambrel.yields.reconciliation.error;

import static dev.gambrel.yields.reconciliation.CarcassSheet.node;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.reconciliation.CarcassSheet;
import dev.gambrel.yields.reconciliation.MassTree;
import dev.gambrel.yields.reconciliation.ReadingTest;
import dev.gambrel.yields.reconciliation.Readings;
import dev.gambrel.yields.reconciliation.Reconciliation;
import java.util.List;
import org.junit.jupiter.api.Test;

class SuspectsTest {
    private static final double LEVEL = 0.05;

    /** Six measurements at 5 % in all: computed from the normal distribution. */
    @Test
    void theLargestOfSixTestsMayStrayFurtherThanOne() {
        assertEquals(2.63103828, Sidak.critical(6, 0.05), 1e-7);
    }

    @Test
    void aGoodSheetHasNoSuspect() {
        Suspects suspects = Suspects.of(Reconciliation.of(CarcassSheet.TREE, CarcassSheet.readings()), LEVEL);
        assertEquals(List.of(), suspects.found());
        assertTrue(suspects.isComplete());
    }

    /** The loin 0.50 kg too heavy. Figures computed independently by dense least squares. */
    @Test
    void ofTheLeavesOfACutNoneIsNamedAlone() {
        Reconciliation sheet = CarcassSheet.with("loin", 3.30);
        assertEquals(9.74, z(sheet, "loin"), 0.005);
        assertEquals(9.74, z(sheet, "rack"), 0.005);
        assertEquals(4.08, Math.abs(z(sheet, "carcass")), 0.005);
        assertEquals(4.08, Math.abs(z(sheet, "loss")), 0.005);
        Suspects suspects = Suspects.of(sheet, LEVEL);
        Suspect.OneBalance found =
                assertInstanceOf(Suspect.OneBalance.class, suspects.found().get(0));
        assertEquals(1, suspects.found().size());
        assertEquals(List.of(node("middle")), found.cuts());
        assertEquals(List.of(node("rack"), node("loin")), found.readings());
        assertEquals(-0.5, found.missing().mean(), 0.05);
        assertEquals(94.865139, found.z() * found.z(), 1e-5);
        assertEquals(found.after().chiSquare(), suspects.rest().test().chiSquare(), 1e-9);
        assertEquals(found.after().degreesOfFreedom(), suspects.rest().test().degreesOfFreedom());
    }

    /** The hind 7.06 for 7.60 kg, digits exchanged. Figures computed independently by dense least squares. */
    @Test
    void aCutInTheMiddleIsNamedAlone() {
        Reconciliation sheet = CarcassSheet.with("hind", 7.06);
        assertEquals(88.350399, sheet.test().chiSquare(), 1e-5);
        assertEquals(9.273082, Math.abs(z(sheet, "hind")), 1e-5);
        Suspects suspects = Suspects.of(sheet, LEVEL);
        Suspect.OneReading found =
                assertInstanceOf(Suspect.OneReading.class, suspects.found().get(0));
        assertEquals(1, suspects.found().size());
        assertEquals(node("hind"), found.node());
        assertEquals(-0.54, found.error().mean(), 0.06);
    }

    @Test
    void theUppermostReadingCannotBeToldFromTheLossBelowIt() {
        Suspect.OneBalance found = (Suspect.OneBalance)
                Suspects.of(CarcassSheet.with("carcass", 21.00), LEVEL).found().get(0);
        assertEquals(List.of(node("carcass"), node("loss")), found.readings());
        assertEquals(1, found.missing().mean(), 0.2);
    }

    @Test
    void twoWrongReadingsAreFoundOneAfterTheOther() {
        Readings readings =
                CarcassSheet.readings().with(node("hind"), 7.06, 0.0025).with(node("shoulder"), 5.75, 0.0004);
        Suspects suspects = Suspects.of(Reconciliation.of(CarcassSheet.TREE, readings), LEVEL);
        assertEquals(2, suspects.found().size());
        Suspect.OneBalance fore = (Suspect.OneBalance) suspects.found().get(0);
        assertEquals(List.of(node("fore")), fore.cuts());
        assertEquals(node("hind"), ((Suspect.OneReading) suspects.found().get(1)).node());
        assertEquals(3, suspects.rest().test().degreesOfFreedom());
    }

    /** The middle was not weighed: only carcass and ends together can be checked. */
    @Test
    void aCutThatWasNotWeighedSharesTheBalanceAbove() {
        MassTree tree = MassTree.of(-1, 0, 0, 1, 1);
        Readings readings = Readings.none(5)
                .with(0, 10, 0.0001)
                .with(2, 5.5, 0.0001)
                .with(3, 2, 0.0001)
                .with(4, 2, 0.0001);
        Suspect.OneBalance found = (Suspect.OneBalance)
                Suspects.of(Reconciliation.of(tree, readings), LEVEL).found().get(0);
        assertEquals(List.of(0, 1), found.cuts());
        assertEquals(List.of(0, 2, 3, 4), found.readings());
        assertEquals(0.5, found.missing().mean(), 1e-9);
    }

    /** Both quarters were divided, and each agrees with its parts: two readings speak for each of them, and none for the carcass. */
    @Test
    void aReadingThatItsOwnPartsBearOutIsNotBlamedForWhatLacksAbove() {
        MassTree tree = MassTree.of(-1, 0, 0, 1, 1, 2, 2);
        double[] kilograms = {10, 4, 5.5, 2, 2, 2.5, 3};
        double[] variances = {0.0001, 0.0001, 0.0001, 0.0001, 0.0001, 0.0001, 0.0001};
        Suspect.OneBalance found =
                (Suspect.OneBalance) Suspects.of(Reconciliation.of(tree, Readings.of(kilograms, variances)), LEVEL)
                        .found()
                        .get(0);
        assertEquals(List.of(0), found.cuts());
        assertEquals(List.of(0), found.readings());
        assertEquals(0.5, found.missing().mean(), 1e-9);
    }

    private static double z(Reconciliation sheet, String name) {
        return ((ReadingTest.Checked) sheet.reading(node(name))).z();
    }
}
