package dev.gambrel.yields.control;

import dev.gambrel.yields.figure.Interval;
import java.util.ArrayList;
import java.util.List;

/**
 * The chart of an exponentially weighted moving average: each point is λ of the figure and 1 − λ of the point before. For small
 * changes that last. Limits are 3 s √(λ / (2 − λ) (1 − (1 − λ)^2i)) from the centre, exact from the first point on (NIST/SEMATECH
 * e-Handbook of Statistical Methods, 6.3.2.4; the exact form from memory).
 */
public final class EwmaChart {
    /** The usual λ: between 0.2 and 0.3. */
    public static final double USUAL = 0.2;

    private EwmaChart() {}

    /**
     * Charts figures against their own level.
     *
     * @param values in the order of time, 1 or more
     * @param lambda how much the newest counts, above 0 and at most 1
     * @return the chart; or why there is none
     * @throws IllegalArgumentException if there is none, or a figure is no number, or λ is out of its range
     */
    public static ChartAnswer of(List<Double> values, double lambda) {
        return OwnLevel.chart(new Readings(values), level -> of(values, lambda, level));
    }

    /**
     * Charts figures against a level known from elsewhere.
     *
     * @param values in the order of time, 1 or more
     * @param lambda how much the newest counts, above 0 and at most 1
     * @param level where they should lie; the average starts there
     * @return the chart
     * @throws IllegalArgumentException if there is none, or a figure is no number, or λ is out of its range
     */
    public static ControlChart of(List<Double> values, double lambda, ProcessLevel level) {
        if (!(lambda > 0 && lambda <= 1)) {
            throw new IllegalArgumentException("λ is above 0 and at most 1, not " + lambda);
        }
        List<ChartPoint> points = new ArrayList<>();
        double average = level.centre();
        for (double value : new Readings(values).values()) {
            average += lambda * (value - average);
            double before = Math.pow(1 - lambda, 2 * (points.size() + 1));
            double half = IndividualsChart.LIMITS * level.deviation() * Math.sqrt(lambda / (2 - lambda) * (1 - before));
            points.add(new ChartPoint(value, average, new Interval(level.centre() - half, level.centre() + half)));
        }
        return new ControlChart(level, points);
    }
}
