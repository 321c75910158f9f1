package dev.gambrel.yields.reconciliation;

import static dev.gambrel.yields.reconciliation.ReconciliationLaws.variance;
import static dev.gambrel.yields.reconciliation.ReconciliationLaws.weight;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Two printed networks of six flows: 1 = 2 + 3, 2 = 4, 3 = 5, 4 + 5 = 6. They close a loop, and yet are a tree: flow 6 has the one part 1,
 * since 1 = 2 + 3 = 4 + 5; 2 has the one part 4, and 3 the one part 5.
 */
class PublishedNetworksTest {
    private static final MassTree NETWORK = MassTree.of(-1, 0, 1, 1, 2, 3);
    /** Where flows 1 to 6 stand in it. */
    private static final int[] FLOW = {1, 2, 3, 4, 5, 0};

    /**
     * Cooling-water network: Program for North American Mobility in Higher Education, "Basic Concepts in Data Reconciliation", 2003; seen
     * worked through with its results.
     */
    private static final double[] COOLING_WATER = {110.5, 60.8, 35.0, 68.9, 38.6, 101.4};

    private static final double[] COOLING_WATER_VARIANCE = {0.6724, 0.2809, 0.2116, 0.5041, 0.2025, 1.44};

    /** The same with a biased second flow: S. Narasimhan and C. Jordache, "Data Reconciliation and Gross Error Detection", 2000, chapter 1. */
    private static final double[] BYPASS = {101.91, 68.45, 34.65, 64.20, 36.44, 98.88};

    private static Reconciliation reconciled(double[] flows, double[] variances, int... measured) {
        Readings readings = Readings.none(6);
        for (int flow : measured) {
            readings = readings.with(FLOW[flow - 1], flows[flow - 1], variances[flow - 1]);
        }
        return Reconciliation.of(NETWORK, readings);
    }

    private static Reconciliation bypass(double... flows) {
        return reconciled(flows, new double[] {1, 1, 1, 1, 1, 1}, 1, 2, 3, 4, 5, 6);
    }

    private static void assertFlows(double[] expected, Reconciliation sheet, double tolerance) {
        IntStream.range(0, 6).forEach(i -> assertEquals(expected[i], weight(sheet, FLOW[i]), tolerance));
    }

    @Test
    void coolingWaterIsReconciledAsPrinted() {
        Reconciliation sheet = reconciled(COOLING_WATER, COOLING_WATER_VARIANCE, 1, 2, 3, 4, 5, 6);
        double[] printed = {103.24010825, 65.41556049, 37.82454776, 65.41556049, 37.82454776, 103.24010825};
        assertFlows(printed, sheet, 1e-7);
        double[] variances = {0.1753, 0.1365, 0.0890, 0.1365, 0.0890, 0.1753};
        IntStream.range(0, 6).forEach(i -> assertEquals(variances[i], variance(sheet, FLOW[i]), 5e-5));
    }

    /** The printed example never tests its own scales: computed independently by least squares, J is 221 on 4 degrees of freedom. */
    @Test
    void theScalesOfThePrintedExampleAreWorseThanItSays() {
        GlobalTest test = reconciled(COOLING_WATER, COOLING_WATER_VARIANCE, 1, 2, 3, 4, 5, 6)
                .test();
        assertEquals(4, test.degreesOfFreedom());
        assertEquals(221, test.chiSquare(), 0.5);
        assertEquals(Math.sqrt(221 / 4.0), test.errorFactor(), 0.01);
    }

    @Test
    void flowsThatWereNotMeasuredFollowFromTheOthers() {
        Reconciliation sheet = reconciled(COOLING_WATER, COOLING_WATER_VARIANCE, 1, 3, 5);
        assertFlows(new double[] {110.5, 73.66, 36.83955566, 73.66, 36.83955566, 110.5}, sheet, 0.005);
        assertEquals(36.83955566, weight(sheet, FLOW[2]), 1e-7);
        assertInstanceOf(ReadingTest.NotChecked.class, sheet.reading(FLOW[0]));
    }

    @Test
    void ofFlowsBetweenTwoMeasuredOnesOnlyTheSumIsKnown() {
        Reconciliation sheet = reconciled(COOLING_WATER, COOLING_WATER_VARIANCE, 1, 6);
        for (int flow : List.of(2, 3)) {
            Reconciled.OnlyTogether together =
                    assertInstanceOf(Reconciled.OnlyTogether.class, sheet.weight(FLOW[flow - 1]));
            assertEquals(List.of(FLOW[1], FLOW[2]), together.parts());
            assertEquals(weight(sheet, FLOW[0]), together.sum().mean(), 1e-12);
        }
        assertInstanceOf(Reconciled.NotKnown.class, sheet.weight(FLOW[3]));
        assertInstanceOf(Reconciled.NotKnown.class, sheet.weight(FLOW[4]));
    }

    /** The answers to two decimals from memory; the same to more digits by an independent solution. */
    @Test
    void theBypassIsReconciledWithAndWithoutItsGrossError() {
        Reconciliation good = bypass(101.91, 64.45, 34.65, 64.20, 36.44, 98.88);
        assertFlows(new double[] {100.22, 64.50, 35.72, 64.50, 35.72, 100.22}, good, 0.005);
        Reconciliation biased = bypass(BYPASS);
        double[] smeared = {100.886667, 65.833333, 35.053333, 65.833333, 35.053333, 100.886667};
        assertFlows(smeared, biased, 1e-6);
    }

    @Test
    void theGlobalTestRejectsTheBiasedBypass() {
        GlobalTest test = bypass(BYPASS).test();
        assertEquals(16.6741667, test.chiSquare(), 1e-7);
        assertEquals(4, test.degreesOfFreedom());
        assertEquals(0.05, new GlobalTest(9.487729037, 4).probability(), 1e-9);
        assertEquals(true, test.probability() < 0.05);
    }
}
