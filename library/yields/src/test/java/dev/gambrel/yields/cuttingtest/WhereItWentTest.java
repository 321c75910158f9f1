package dev.gambrel.yields.cuttingtest;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.cuttingtest.PartReading.State;
import dev.gambrel.yields.cuttingtest.WhereItWent.Share;
import dev.gambrel.yields.cuttingtest.WhereItWent.Sort;
import dev.gambrel.yields.figure.Estimate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An invented hogget of Marram Isle Meats of 20 kg; every expectation is a share of that by hand. */
class WhereItWentTest {
    private static final Scale BENCH = Scale.ofDivision("bench", 0.002);
    private static final CutTree HOGGET = hogget(
            pair("leg", "40.0 ± 1.0", trim("fat", "10.0 ± 1.0", "mince")),
            cut("saddle", "59.5 ± 1.0"),
            loss("drip", "0.5 ± 0.1"));
    private static final ExpectedYields EXPECTED = yields(HOGGET, "20");

    private static PartReading reading(double kilograms, State state, String... part) {
        return new PartReading(
                new TreePath(Arrays.stream(part).map(TradeName::of).toList()),
                state,
                List.of(new Weighing(BENCH, kilograms, 1)));
    }

    private static List<PartReading> sheet(double carcass) {
        return new ArrayList<>(List.of(
                reading(carcass, State.WHOLE),
                reading(8.0, State.WHOLE, "leg"),
                reading(7.0, State.TRIMMED, "leg"),
                reading(1.0, State.WHOLE, "leg", "fat"),
                reading(11.9, State.WHOLE, "saddle")));
    }

    private static Share of(CuttingTest test, Sort sort) {
        return WhereItWent.of(test).shares().stream()
                .filter(share -> share.sort() == sort)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatTheTrimHasTooMuchTheMeatLacks() {
        CuttingTest test = CuttingTest.of(EXPECTED, sheet(20.0));
        assertEquals(0.2, of(test, Sort.TRIM).difference().orElseThrow(), 0.002);
        assertEquals(-0.2, of(test, Sort.MEAT).difference().orElseThrow(), 0.002);
        double sum = WhereItWent.of(test).shares().stream()
                .mapToDouble(share -> share.difference().orElseThrow())
                .sum();
        assertEquals(0, sum, 20e-12);
    }

    @Test
    void whatWasNotWeighedApartIsNeitherMeatNorTrim() {
        List<PartReading> sheet = sheet(20.0);
        sheet.removeIf(reading -> reading.part().names().size() == 2 || reading.state() == State.TRIMMED);
        CuttingTest test = CuttingTest.of(EXPECTED, sheet);
        assertEquals(8.0, of(test, Sort.NOT_WEIGHED).kilograms(), 0.01);
        assertEquals(11.9, of(test, Sort.MEAT).kilograms(), 0.01);
    }

    /** The leg is expected at 8 kg with 1 % of 20 kg for one deviation: 8.4 kg is two of them too much. */
    @Test
    void aPartIsHeldAgainstWhatTheCarcassShouldGive() {
        List<PartReading> sheet = List.of(reading(20.0, State.WHOLE), reading(8.4, State.WHOLE, "leg"));
        PartComparison leg =
                PartComparison.of(CuttingTest.of(EXPECTED, sheet), EXPECTED).get(0);
        assertEquals(8.0, leg.expected().mean(), 1e-12);
        assertEquals(0.4, leg.difference().orElseThrow(), 1e-12);
        double deviation = Math.sqrt(leg.expected().spread().variance());
        assertEquals(0.4 / deviation, leg.z().orElseThrow(), 1e-4);
        assertTrue(deviation > 0);
    }

    @Test
    void aPartOfWhichNoShareIsStatedHasNoDifference() {
        PartComparison leg = new PartComparison(1, Estimate.exactly(8.4), Estimate.exactly(0), false);
        assertTrue(leg.difference().isEmpty());
        assertTrue(leg.z().isEmpty());
    }

    @Test
    void aSheetBalancesOrDoesNotOrIsNotChecked() {
        assertEquals(
                Verdict.BALANCES,
                Faults.of(CuttingTest.of(EXPECTED, sheet(20.0)), 0.05).verdict());
        assertEquals(
                Verdict.DOES_NOT_BALANCE,
                Faults.of(CuttingTest.of(EXPECTED, sheet(20.5)), 0.05).verdict());
        List<PartReading> alone = List.of(reading(20.0, State.WHOLE), reading(8.0, State.WHOLE, "leg"));
        assertEquals(
                Verdict.NOT_CHECKED,
                Faults.of(CuttingTest.of(EXPECTED, alone), 0.05).verdict());
    }
}
