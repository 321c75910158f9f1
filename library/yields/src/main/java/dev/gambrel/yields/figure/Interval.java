package dev.gambrel.yields.figure;

/**
 * From a low value to a high one.
 *
 * @param low the lower end
 * @param high the upper end
 */
public record Interval(double low, double high) {}
