package dev.gambrel.cli.origin.report;

import dev.gambrel.compiler.origin.Origin;

/**
 * A value with where it comes from.
 *
 * @param what which value it is: "share", "goes to"
 * @param origin where it comes from
 * @param isFigure whether it could rest on a source, so that a missing one is worth saying
 */
public record StatedValue(String what, Origin origin, boolean isFigure) {}
