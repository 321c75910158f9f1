package dev.gambrel.yields.control;

import dev.gambrel.yields.figure.Interval;
import java.util.List;

/**
 * The chart of single figures: limits 3 standard deviations from the mean, the standard deviation from the mean range of neighbours
 * over 1.128 (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2). For large and sudden changes. Tests that resemble their
 * neighbours, such as carcasses of one supplier, narrow the limits and give false signals.
 */
public final class IndividualsChart {
    /** Limits are so many standard deviations from the centre. */
    public static final double LIMITS = 3;

    private IndividualsChart() {}

    /**
     * Charts figures against their own level.
     *
     * @param values in the order of time, 1 or more
     * @return the chart; or why there is none
     * @throws IllegalArgumentException if there is none, or one is no number
     */
    public static ChartAnswer of(List<Double> values) {
        return OwnLevel.chart(new Readings(values), level -> of(values, level));
    }

    /**
     * Charts figures against a level known from elsewhere, such as the tests of last season.
     *
     * @param values in the order of time, 1 or more
     * @param level where they should lie
     * @return the chart
     * @throws IllegalArgumentException if there is none, or one is no number
     */
    public static ControlChart of(List<Double> values, ProcessLevel level) {
        double half = LIMITS * level.deviation();
        Interval limits = new Interval(level.centre() - half, level.centre() + half);
        return new ControlChart(
                level,
                new Readings(values)
                        .values().stream()
                                .map(value -> new ChartPoint(value, value, limits))
                                .toList());
    }
}
