package dev.gambrel.reports.svg;

/**
 * A place on a picture.
 *
 * @param x to the right
 * @param y downwards
 */
public record Point(double x, double y) {}
