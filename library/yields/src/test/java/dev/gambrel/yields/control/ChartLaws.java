package dev.gambrel.yields.control;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class ChartLaws {
    private static final double NEAR = 1e-7;

    private static List<Double> changed(List<Double> values, double factor, double shift) {
        return values.stream().map(value -> factor * value + shift).toList();
    }

    private static void assertMoved(ChartAnswer before, ChartAnswer after, double factor, double shift) {
        ControlChart one = ((ChartAnswer.Drawn) before).chart();
        ControlChart other = ((ChartAnswer.Drawn) after).chart();
        assertEquals(factor * one.level().centre() + shift, other.level().centre(), NEAR);
        for (int i = 0; i < one.points().size(); i++) {
            ChartPoint point = one.points().get(i);
            ChartPoint moved = other.points().get(i);
            assertEquals(factor * point.plotted() + shift, moved.plotted(), NEAR);
            assertEquals(factor * point.limits().low() + shift, moved.limits().low(), NEAR);
            assertEquals(factor * point.limits().high() + shift, moved.limits().high(), NEAR);
        }
    }

    @Property(tries = 300)
    void charts_move_and_stretch_with_their_figures(
            @ForAll @Size(min = 8, max = 20) List<@DoubleRange(min = 0, max = 100) Double> values,
            @ForAll @DoubleRange(min = 0.1, max = 10) double factor,
            @ForAll @DoubleRange(min = -50, max = 50) double shift) {
        Assume.that(values.stream().distinct().count() > 1);
        List<Double> changed = changed(values, factor, shift);
        assertMoved(IndividualsChart.of(values), IndividualsChart.of(changed), factor, shift);
        assertMoved(EwmaChart.of(values, 0.2), EwmaChart.of(changed, 0.2), factor, shift);
    }

    @Property(tries = 300)
    void cumulative_sums_stretch_and_do_not_move(
            @ForAll @Size(min = 1, max = 20) List<@DoubleRange(min = 0, max = 100) Double> values,
            @ForAll @DoubleRange(min = 0.1, max = 10) double factor,
            @ForAll @DoubleRange(min = -50, max = 50) double shift) {
        CusumChart one = CusumChart.of(values, 50, 3, 20);
        CusumChart other = CusumChart.of(changed(values, factor, shift), factor * 50 + shift, factor * 3, factor * 20);
        for (int i = 0; i < values.size(); i++) {
            assertEquals(
                    factor * one.points().get(i).upper(), other.points().get(i).upper(), NEAR);
            assertEquals(
                    factor * one.points().get(i).lower(), other.points().get(i).lower(), NEAR);
        }
    }

    @Property(tries = 300)
    void an_average_that_forgets_all_is_the_chart_of_single_figures(
            @ForAll @Size(min = 8, max = 20) List<@DoubleRange(min = 0, max = 100) Double> values) {
        Assume.that(values.stream().distinct().count() > 1);
        assertMoved(IndividualsChart.of(values), EwmaChart.of(values, 1), 1, 0);
    }

    @Property(tries = 300)
    void figures_that_stray_alike_are_standardised_about_their_mean(
            @ForAll @Size(min = 1, max = 20) List<@DoubleRange(min = 0, max = 100) Double> values,
            @ForAll @DoubleRange(min = 0.1, max = 10) double deviation) {
        List<Double> deviations = values.stream().map(value -> deviation).toList();
        Standardised standardised = Standardised.of(values, deviations);
        double sum = standardised.values().stream().mapToDouble(z -> z).sum();
        assertEquals(0, sum, NEAR);
    }
}
