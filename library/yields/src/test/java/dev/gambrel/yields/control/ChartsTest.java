package dev.gambrel.yields.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ChartsTest {
    /** Batches of NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2. */
    private static final List<Double> TEN = List.of(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1);

    private static final List<Double> TWENTY = Stream.concat(
                    Stream.of(52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5), TEN.stream())
            .toList();

    private static ControlChart drawn(ChartAnswer answer) {
        return assertInstanceOf(ChartAnswer.Drawn.class, answer).chart();
    }

    /** NIST/SEMATECH e-Handbook, 6.3.2.2: 50.81, 1.8778, 55.8041 and 45.8159. */
    @Test
    void single_figures_have_the_published_limits() {
        ControlChart chart = drawn(IndividualsChart.of(TEN));
        assertEquals(50.81, chart.level().centre(), 0.0001);
        assertEquals(1.8778, chart.level().deviation() * ProcessLevel.RANGE_OF_TWO, 0.0001);
        assertEquals(55.8041, chart.points().get(0).limits().high(), 0.0001);
        assertEquals(45.8159, chart.points().get(9).limits().low(), 0.0001);
        assertEquals(List.of(), chart.signals());
    }

    @Test
    void a_figure_beyond_the_limits_is_a_signal() {
        ControlChart chart = IndividualsChart.of(List.of(50.0, 57.1, 43.9, 57.0), new ProcessLevel(50, 7 / 3.0));
        assertEquals(List.of(new Signal.Above(1, 57.1, 57)), chart.signals());
        assertEquals(
                List.of(new Signal.Below(0, 42, 43)),
                IndividualsChart.of(List.of(42.0), new ProcessLevel(50, 7 / 3.0))
                        .signals());
    }

    /** The averages printed in NIST/SEMATECH e-Handbook, 6.3.2.4. */
    @Test
    void moving_averages_are_the_published_ones() {
        double[] published = {
            50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38,
            49.92, 50.73, 51.23, 51.94, 51.99
        };
        ControlChart chart = EwmaChart.of(TWENTY, 0.3, new ProcessLevel(50, 2.0539));
        for (int i = 0; i < published.length; i++) {
            assertEquals(published[i], chart.points().get(i).plotted(), 0.005 + 1e-9);
        }
        assertEquals(List.of(), chart.signals());
    }

    /** By hand: the first average strays by 0.3 of a figure. At last 52.5884 and 47.4115 of 6.3.2.4 (from memory). */
    @Test
    void the_limits_of_averages_widen_from_the_first_on() {
        List<ChartPoint> points =
                EwmaChart.of(TWENTY, 0.3, new ProcessLevel(50, 2.0539)).points();
        assertEquals(50 + 3 * 0.3 * 2.0539, points.get(0).limits().high(), 1e-9);
        assertEquals(52.5884, points.get(19).limits().high(), 0.0001);
        assertEquals(47.4115, points.get(19).limits().low(), 0.0002);
    }

    /** Figures, aim and limits of NIST/SEMATECH e-Handbook, 6.3.2.3 (from memory); the sums computed independently. */
    @Test
    void cumulative_sums_tell_a_shift_and_since_when() {
        List<Double> values = List.of(
                324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225, 324.600, 324.625,
                325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775, 326.875, 328.350);
        CusumChart chart = CusumChart.of(values, 325, 0.3175, 4.1959);
        assertEquals(3.01, chart.points().get(12).upper(), 0.005);
        assertEquals(4.94, chart.points().get(13).upper(), 0.005);
        assertEquals(7.45, chart.points().get(14).upper(), 0.005);
        Signal.Risen first =
                assertInstanceOf(Signal.Risen.class, chart.signals().get(0));
        assertEquals(13, first.index());
        assertEquals(12, first.since());
        assertEquals(7, chart.signals().size());
    }

    @Test
    void a_fall_is_summed_up_too() {
        List<Signal> signals =
                CusumChart.of(List.of(10.0, 9.0, 9.0, 9.0), 10, 0.25, 2).signals();
        assertEquals(List.of(new Signal.Sunk(3, 1, 2.25, 2)), signals);
    }

    /** t(0.975; 2) = 4.302653 in any table of Student's t; 1 standard deviation, times √(4 / 3). */
    @Test
    void few_tests_give_no_chart_but_a_range_for_the_next() {
        ChartAnswer.TooFew few =
                assertInstanceOf(ChartAnswer.TooFew.class, IndividualsChart.of(List.of(7.0, 8.0, 9.0)));
        assertEquals(3, few.tests());
        assertEquals(8, few.mean());
        assertEquals(8 + 4.302653 * Math.sqrt(4 / 3.0), few.next().high(), 1e-6);
        assertEquals(8 - 4.302653 * Math.sqrt(4 / 3.0), few.next().low(), 1e-6);
        assertInstanceOf(ChartAnswer.TooFew.class, EwmaChart.of(TEN.subList(0, 7), 0.2));
        assertInstanceOf(ChartAnswer.Drawn.class, EwmaChart.of(TEN.subList(0, 8), 0.2));
    }

    @Test
    void one_test_tells_nothing_of_the_next() {
        assertEquals(new ChartAnswer.OneTest(7), IndividualsChart.of(List.of(7.0)));
    }

    @Test
    void figures_that_never_vary_have_no_limits() {
        ChartAnswer never = new ChartAnswer.NeverVaries(9, 0.1);
        assertEquals(never, IndividualsChart.of(Collections.nCopies(9, 0.1)));
        assertInstanceOf(ChartAnswer.NeverVaries.class, IndividualsChart.of(List.of(0.3, 0.1 + 0.2)));
        assertEquals(new ChartAnswer.NeverVaries(2, 0.1), EwmaChart.of(List.of(0.1, 0.1), 0.2));
    }

    @Test
    void what_is_no_figure_is_refused() {
        ProcessLevel level = new ProcessLevel(1, 1);
        assertThrows(IllegalArgumentException.class, () -> IndividualsChart.of(List.of()));
        assertThrows(IllegalArgumentException.class, () -> IndividualsChart.of(List.of(1.0, Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> EwmaChart.of(List.of(Double.POSITIVE_INFINITY), 0.2, level));
        assertThrows(IllegalArgumentException.class, () -> EwmaChart.of(List.of(1.0), 0, level));
        assertThrows(IllegalArgumentException.class, () -> EwmaChart.of(List.of(1.0), 1.1, level));
        assertThrows(IllegalArgumentException.class, () -> CusumChart.of(List.of(1.0), 1, -1, 1));
        assertThrows(IllegalArgumentException.class, () -> CusumChart.of(List.of(1.0), 1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> CusumChart.of(List.of(1.0), Double.NaN, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new ProcessLevel(1, 0));
        assertThrows(IllegalArgumentException.class, () -> new ProcessLevel(Double.NaN, 1));
    }

    /** By hand: 10 ± 1 and 14 ± 2 have the mean (10 + 14 / 4) / 1.25 = 10.8. */
    @Test
    void figures_weighed_better_count_more() {
        Standardised standardised = Standardised.of(List.of(10.0, 14.0), List.of(1.0, 2.0));
        assertEquals(10.8, standardised.mean(), 1e-12);
        assertEquals(-0.8, standardised.values().get(0), 1e-12);
        assertEquals(1.6, standardised.values().get(1), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> Standardised.of(List.of(1.0), List.of(0.0)));
        assertThrows(IllegalArgumentException.class, () -> Standardised.of(List.of(1.0), List.of()));
    }
}
