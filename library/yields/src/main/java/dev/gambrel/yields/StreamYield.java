package dev.gambrel.yields;

import dev.gambrel.tree.Stream;
import dev.gambrel.yields.figure.Estimate;

/**
 * What comes together in one stream.
 *
 * @param stream the stream
 * @param weight kilograms from the whole carcass
 */
public record StreamYield(Stream stream, Estimate weight) {}
