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
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.cuttingtest.PartReading.State;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is said against sheets of an invented hogget of 20 kg on which nothing is wrong but what scales and drip do by chance. */
class FaultsTest {
    private static final ExpectedYields EXPECTED = yields(
            hogget(
                    pair("leg", "40.0 ± 1.0", trim("fat", "10.0 ± 1.0", "mince"), trim("sinew", "4.0 ± 1.0", "mince")),
                    pair("shoulder", "30.0 ± 1.0", trim("fat", "9.0 ± 1.0", "mince")),
                    cut("saddle", "29.5 ± 1.0"),
                    loss("drip", "0.5 ± 0.1")),
            "20");
    private static final Scale RAIL = Scale.ofDivision("rail", 0.02);
    private static final Scale BENCH = new Scale("bench", 0.005, 0, 0.002);
    private static final int SHEETS = 1_000;

    private final Random random = new Random(20_261_130);

    private PartReading reading(Scale scale, double kilograms, State state, String... part) {
        double error = Math.sqrt(scale.variance(kilograms, 1)) * random.nextGaussian();
        return new PartReading(
                new TreePath(Arrays.stream(part).map(TradeName::of).toList()),
                state,
                List.of(new Weighing(scale, kilograms + error, 1)));
    }

    private List<PartReading> sheet() {
        double leg = 8 + 0.2 * random.nextGaussian();
        double shoulder = 6 + 0.2 * random.nextGaussian();
        double saddle = 20 - leg - shoulder - (0.1 + 0.02 * random.nextGaussian());
        return List.of(
                reading(RAIL, 20, State.WHOLE),
                reading(BENCH, leg, State.WHOLE, "leg"),
                reading(BENCH, leg * 0.86, State.TRIMMED, "leg"),
                reading(BENCH, leg * 0.10, State.WHOLE, "leg", "fat"),
                reading(BENCH, leg * 0.04, State.WHOLE, "leg", "sinew"),
                reading(BENCH, shoulder, State.WHOLE, "shoulder"),
                reading(BENCH, shoulder * 0.91, State.TRIMMED, "shoulder"),
                reading(BENCH, shoulder * 0.09, State.WHOLE, "shoulder", "fat"),
                reading(BENCH, saddle, State.WHOLE, "saddle"));
    }

    /**
     * Of 1,000 sheets at most 5 % are 50, with a standard deviation of 6.9 (binomial): 77 are 4 of them more. Some are found, or the
     * sheets would be looked at by nobody.
     */
    @Test
    void fewSheetsOnWhichNothingIsWrongAreFaulted() {
        int faulted = 0;
        for (int i = 0; i < SHEETS; i++) {
            Faults faults = Faults.of(CuttingTest.of(EXPECTED, sheet()), 0.05);
            faulted += faults.verdict() == Verdict.DOES_NOT_BALANCE ? 1 : 0;
        }
        assertTrue(faulted > 5 && faulted <= 77, faulted + " of " + SHEETS);
    }

    /** Leg 8 kg, of which 6.9 kg trimmed and 1.5 kg fat: its sinew would weigh 400 g less than nothing. */
    @Test
    void aPartThatWouldWeighLessThanNothingIsAFault() {
        CuttingTest test = CuttingTest.of(
                EXPECTED,
                List.of(
                        reading(BENCH, 8, State.WHOLE, "leg"),
                        reading(BENCH, 6.9, State.TRIMMED, "leg"),
                        reading(BENCH, 1.5, State.WHOLE, "leg", "fat")));
        Faults faults = Faults.of(test, 0.05);
        assertEquals(Verdict.DOES_NOT_BALANCE, faults.verdict());
        assertEquals(1, faults.belowNothing().size());
        assertEquals(
                "leg / sinew", test.plan().node(faults.belowNothing().get(0)).address());
        assertEquals(List.of(1), test.notChecked());
        assertEquals(faults.belowNothing(), test.openParts(1));
    }
}
