package dev.gambrel.yields.drift;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.ControlChart;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.PartReading;
import dev.gambrel.yields.cuttingtest.PartReading.State;
import dev.gambrel.yields.cuttingtest.Scale;
import dev.gambrel.yields.cuttingtest.Weighing;
import dev.gambrel.yields.drift.LabelledTest.Common;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Legs of an invented hogget, 10 kg each pair by a scale without error, and how much of them is fat. */
class DriftTest {
    /** Ten figures of the NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, taken for per cents. */
    private static final double[] OF_HANDBOOK = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};

    private static final CutTree HOGGET = hogget(
            pair("leg", "40.0 ± 1.0", trim("fat", "50.0 ± 1.0", "mince")),
            cut("saddle", "59.5 ± 1.0"),
            loss("drip", "0.5 ± 0.1"));
    private static final ExpectedYields EXPECTED = yields(HOGGET, "20");
    private static final int LEG = 1;

    private static PartReading reading(String scale, double kilograms, State state, String... part) {
        return new PartReading(
                new TreePath(Arrays.stream(part).map(TradeName::of).toList()),
                state,
                List.of(new Weighing(Scale.ofDivision(scale, 0), kilograms, 1)));
    }

    private static LabelledTest test(int index, String cutter, String scale, double percent) {
        CuttingTest test = CuttingTest.of(
                EXPECTED,
                List.of(
                        reading(scale, 10, State.WHOLE, "leg"),
                        reading(scale, percent / 10, State.WHOLE, "leg", "fat"),
                        reading(scale, 10 - percent / 10, State.TRIMMED, "leg")));
        return new LabelledTest("test " + (index + 1), cutter, "", test);
    }

    private static List<LabelledTest> tests(double... percents) {
        return IntStream.range(0, percents.length)
                .mapToObj(i -> test(i, "", "bench", percents[i]))
                .toList();
    }

    private static CutDrift leg(Drift drift) {
        return drift.cuts().stream().filter(cut -> cut.cut() == LEG).findFirst().orElseThrow();
    }

    private static ControlChart chart(ChartAnswer answer) {
        return assertInstanceOf(ChartAnswer.Drawn.class, answer).chart();
    }

    /** NIST/SEMATECH e-Handbook, 6.3.2.2: mean 50.81, limits 45.8159 and 55.8041. */
    @Test
    void sharesAreChartedAsTheHandbookChartsItsFigures() {
        Drift drift = Drift.of(tests(OF_HANDBOOK), new Baseline.AllTests());
        ControlChart fat = chart(leg(drift).parts().get(0).single());
        assertEquals(50.81, fat.level().centre(), 1e-9);
        assertEquals(55.8041, fat.points().get(0).limits().high(), 1e-4);
        assertEquals(45.8159, fat.points().get(0).limits().low(), 1e-4);
        assertTrue(drift.isQuiet());
        assertEquals(2 * 10 * 0.0027, drift.likelyFalseSignals(), 1e-12);
    }

    @Test
    void aTestFarOffIsToldOnceForACutOfTwoParts() {
        double[] percents = Arrays.copyOf(OF_HANDBOOK, 11);
        percents[10] = 70;
        Drift drift = Drift.of(tests(percents), new Baseline.FirstTests(10));
        assertFalse(drift.isQuiet());
        List<String> told = new DriftSentences(drift).of(leg(drift));
        assertEquals("leg / fat was 70.00 % of leg in test 11: above the 55.80 % that chance keeps to.", told.get(1));
        assertTrue(told.stream().noneMatch(sentence -> sentence.startsWith("leg, trimmed")), told.toString());
        assertTrue(
                told.get(0).startsWith("leg came out otherwise as a whole in test 11")
                        && told.get(0).endsWith("more fat for its leg, trimmed than in the other tests."),
                told.toString());
    }

    /**
     * The mean of the first six is 297.4 / 6 and that of the others 749.7 / 14. The limit of the last point, by hand: 50.81 + 3 × 1.8778 / 1.128 × √(0.2 / 1.8), and 1e-4 less for the first points.
     */
    @Test
    void aSmallChangeThatLastsIsFoundByTheAverageAlone() {
        double[] percents = Arrays.copyOf(OF_HANDBOOK, 20);
        Arrays.fill(percents, 10, 20, 53.9);
        Drift drift = Drift.of(tests(percents), new Baseline.FirstTests(10));
        PartDrift fat = leg(drift).parts().get(0);
        assertEquals(List.of(), chart(fat.single()).signals());
        List<String> told = new DriftSentences(drift).of(leg(drift), fat);
        assertEquals(1, told.size());
        assertEquals(
                "leg / fat was 49.57 % of leg on average in the 6 tests up to test 6, and 53.55 % in the 14 tests since test 7; its"
                        + " moving average came to 53.65 % of leg in test 20, above the 52.47 % that chance"
                        + " keeps to.",
                told.get(0));
    }

    @Test
    void aTestAmongTheFirstThatIsOutOfShapeIsToldTooWhenLaterOnesCome() {
        double[] percents = Arrays.copyOf(OF_HANDBOOK, 14);
        Arrays.fill(percents, 10, 14, 50);
        percents[3] = 90;
        Drift drift = Drift.of(tests(percents), new Baseline.FirstTests(10));
        ShapeDrift.Charted shape =
                assertInstanceOf(ShapeDrift.Charted.class, leg(drift).shape());
        assertEquals(3, shape.chart().signals().get(0).index());
        assertFalse(drift.isQuiet());
    }

    /** Fat and what it leaves are one fact. */
    @Test
    void aCutOfTwoPartsIsComparedOnce() {
        List<LabelledTest> tests = IntStream.range(0, 10)
                .mapToObj(i ->
                        test(i, i % 2 == 0 ? "first block" : "second block", "bench", OF_HANDBOOK[i] + 9 * (i % 2)))
                .toList();
        assertEquals(1, Drift.of(tests, new Baseline.AllTests()).comparisons());
    }

    @Test
    void aTestThatDoesNotTellAllPartsSaysNothingOfTheCut() {
        List<LabelledTest> tests = List.of(
                test(0, "", "bench", 50),
                new LabelledTest(
                        "test 2", "", "", CuttingTest.of(EXPECTED, List.of(reading("bench", 10, State.WHOLE, "leg")))));
        assertEquals(List.of(0), leg(Drift.of(tests, new Baseline.AllTests())).tests());
    }

    @Test
    void fewerThanEightTestsAreNotCharted() {
        CutDrift leg = leg(Drift.of(tests(49.6, 47.6, 49.9), new Baseline.AllTests()));
        assertInstanceOf(ChartAnswer.TooFew.class, leg.parts().get(0).single());
        assertInstanceOf(ShapeDrift.NotCharted.class, leg.shape());
        assertThrows(IllegalArgumentException.class, () -> new Baseline.FirstTests(7));
    }

    /** By hand: (49.6 + 49.9 + 47.8 + 52.6 + 53.6) / 5 against (47.6 + 51.3 + 51.2 + 52.4 + 52.1) / 5 and 9 more. */
    @Test
    void aCutterWhoLeavesMoreFatIsNamed() {
        List<LabelledTest> tests = IntStream.range(0, 10)
                .mapToObj(i -> test(
                        i, i % 2 == 0 ? "first\u202Eblock" : "second block", "bench", OF_HANDBOOK[i] + 9 * (i % 2)))
                .toList();
        Drift drift = Drift.of(tests, new Baseline.AllTests());
        GroupFinding finding = drift.groups().get(0);
        assertEquals(Common.CUTTER, finding.common());
        String sentence = new DriftSentences(drift).of(finding);
        assertTrue(sentence.startsWith("leg / fat is 9.22 points less of its cut by cutter “"), sentence);
        assertTrue(sentence.contains("block” than elsewhere (5 tests against 5;"), sentence);
        assertFalse(sentence.contains("\u202E"), sentence);
    }

    @Test
    void aScaleIsTheOneThatThePartWasWeighedOn() {
        assertEquals("bench", test(0, "", "bench", 50).label(Common.SCALE, LEG));
        assertEquals("", test(0, "", "bench", 50).label(Common.SCALE, 0));
    }

    @Test
    void testsOfOtherLinesAreNotCharted() {
        CuttingTest other = CuttingTest.of(yields(hogget(cut("saddle", "100.0")), "20"), List.of());
        List<LabelledTest> tests = List.of(test(0, "", "bench", 50), new LabelledTest("other", "", "", other));
        assertThrows(IllegalArgumentException.class, () -> Drift.of(tests, new Baseline.AllTests()));
        assertThrows(IllegalArgumentException.class, () -> Drift.of(List.of(), new Baseline.AllTests()));
    }
}
