package dev.gambrel.yields.control;

import java.util.ArrayList;
import java.util.List;

/**
 * Cumulative sums: what figures are above or below their aim together, less an allowance for each, and never below 0. For small changes
 * that last, and it tells since when (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3).
 *
 * @param aim where the figures should lie
 * @param allowance what each may be off without counting: half of the change to be found
 * @param limit what a sum may be: 4 to 5 standard deviations
 * @param points one for each test
 */
public record CusumChart(double aim, double allowance, double limit, List<CusumPoint> points) {
    /** Copies the list. */
    public CusumChart {
        points = List.copyOf(points);
    }

    /**
     * Sums figures up.
     *
     * @param values in the order of time, 1 or more
     * @param aim where they should lie
     * @param allowance what each may be off without counting, 0 or more
     * @param limit what a sum may be, more than 0
     * @return the chart
     * @throws IllegalArgumentException if a figure is no number or out of its range
     */
    public static CusumChart of(List<Double> values, double aim, double allowance, double limit) {
        if (!(Double.isFinite(aim) && allowance >= 0 && limit > 0 && Double.isFinite(allowance + limit))) {
            throw new IllegalArgumentException("no cumulative sums: " + aim + ", " + allowance + ", " + limit);
        }
        List<CusumPoint> points = new ArrayList<>();
        double upper = 0;
        double lower = 0;
        for (double value : new Readings(values).values()) {
            upper = Math.max(0, upper + (value - aim) - allowance);
            lower = Math.max(0, lower + (aim - value) - allowance);
            points.add(new CusumPoint(value, upper, lower));
        }
        return new CusumChart(aim, allowance, limit, points);
    }

    /**
     * The tests at which a sum is beyond its limit.
     *
     * @return in the order of time
     */
    public List<Signal> signals() {
        List<Signal> signals = new ArrayList<>();
        int high = 0;
        int low = 0;
        for (int i = 0; i < points.size(); i++) {
            CusumPoint point = points.get(i);
            high = point.upper() == 0 ? i + 1 : high;
            low = point.lower() == 0 ? i + 1 : low;
            if (point.upper() > limit) {
                signals.add(new Signal.Risen(i, high, point.upper(), limit));
            }
            if (point.lower() > limit) {
                signals.add(new Signal.Sunk(i, low, point.lower(), limit));
            }
        }
        return List.copyOf(signals);
    }
}
