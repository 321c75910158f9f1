package dev.gambrel.yields.control;

import dev.gambrel.yields.figure.Interval;

/**
 * A test on a chart.
 *
 * @param value its figure
 * @param plotted what is drawn: the figure, or an average of it and those before
 * @param limits what chance keeps to here
 */
public record ChartPoint(double value, double plotted, Interval limits) {}
