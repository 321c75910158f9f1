package dev.gambrel.yields.control;

import dev.gambrel.yields.figure.Interval;

/** Whether figures can be charted. */
public sealed interface ChartAnswer {
    /** The fewest tests of which limits are worked out: with fewer they are anybody's guess. Common practice, no source. */
    int FEWEST = 8;

    /**
     * They can.
     *
     * @param chart the chart
     */
    record Drawn(ControlChart chart) implements ChartAnswer {}

    /**
     * There are too few tests for a chart. What may be said is where the next will lie.
     *
     * @param tests how many there are, 2 or more
     * @param mean their mean
     * @param next the range that holds the next in 95 of 100 cases, if nothing changes: Student's t, figures taken as normal
     */
    record TooFew(int tests, double mean, Interval next) implements ChartAnswer {}

    /**
     * There is one test, which tells nothing of the next.
     *
     * @param value its figure
     */
    record OneTest(double value) implements ChartAnswer {}

    /**
     * The figures are all the same, so there are no limits. Real weights stray: ask where the figures come from.
     *
     * @param tests how many there are
     * @param value the figure
     */
    record NeverVaries(int tests, double value) implements ChartAnswer {}
}
