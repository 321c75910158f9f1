package dev.gambrel.yields.control;

/**
 * A test on a chart of cumulative sums.
 *
 * @param value its figure
 * @param upper what the tests up to here are above the aim together, less the allowances, 0 or more
 * @param lower what they are below it
 */
public record CusumPoint(double value, double upper, double lower) {}
