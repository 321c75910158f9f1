package dev.gambrel.reports.picture;

/**
 * What the figures of a chart are.
 *
 * @param words what stands at the scale, such as "topside, % of leg"
 * @param decimals how many are shown, 0 or more
 */
public record ChartUnit(String words, int decimals) {}
