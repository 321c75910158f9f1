package dev.gambrel.yields.reconciliation.error;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.reconciliation.DrawnSheet;
import dev.gambrel.yields.reconciliation.ReadingTest;
import dev.gambrel.yields.reconciliation.Reconciliation;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What holds of suspects whatever was weighed. */
class SuspectLaws {
    @Property(tries = 200)
    void oneGlaringErrorIsFoundFirstWithItsSize(@ForAll long seed) {
        DrawnSheet sheet = DrawnSheet.of(seed);
        int wrong = sheet.anyReading(seed);
        Reconciliation spoilt = sheet.spoilt(wrong, 5);
        List<Suspect> found = Suspects.of(spoilt, 0.05).found();
        if (spoilt.reading(wrong) instanceof ReadingTest.Checked checked) {
            assertTrue(holds(found.get(0), wrong));
            assertEquals(
                    Math.abs(checked.error().mean()),
                    Math.abs(found.get(0).size().mean()),
                    1e-9);
        }
    }

    /** All readings of a suspected balance are blamed alike: the figures cannot tell them apart. */
    @Property(tries = 200)
    void readingsOfOneSuspectStrayAlike(@ForAll long seed) {
        DrawnSheet sheet = DrawnSheet.of(seed);
        Reconciliation spoilt = sheet.spoilt(sheet.anyReading(seed), 5);
        for (Suspect suspect :
                Suspects.of(spoilt, 0.05).found().stream().limit(1).toList()) {
            if (suspect instanceof Suspect.OneBalance balance) {
                for (int v : balance.readings()) {
                    ReadingTest.Checked test = (ReadingTest.Checked) spoilt.reading(v);
                    assertEquals(Math.abs(balance.z()), Math.abs(test.z()), 1e-9 * Math.abs(balance.z()));
                }
            }
        }
    }

    @Property(tries = 200)
    void theSheetWithoutASuspectFitsAsWellAsWasSaid(@ForAll long seed) {
        DrawnSheet sheet = DrawnSheet.of(seed);
        Reconciliation spoilt = sheet.spoilt(sheet.anyReading(seed), 5);
        Suspects suspects = Suspects.of(spoilt, 0.05);
        if (!suspects.found().isEmpty()) {
            Suspect last = suspects.found().get(suspects.found().size() - 1);
            assertEquals(last.after().degreesOfFreedom(), suspects.rest().test().degreesOfFreedom());
            assertEquals(
                    last.after().chiSquare(),
                    suspects.rest().test().chiSquare(),
                    1e-9 * spoilt.test().chiSquare());
        }
        assertTrue(suspects.found().size() <= spoilt.test().degreesOfFreedom());
    }

    private static boolean holds(Suspect suspect, int node) {
        return suspect instanceof Suspect.OneReading one
                ? one.node() == node
                : ((Suspect.OneBalance) suspect).readings().contains(node);
    }
}
