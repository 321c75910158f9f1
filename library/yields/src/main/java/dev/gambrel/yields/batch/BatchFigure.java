package dev.gambrel.yields.batch;

import dev.gambrel.yields.figure.Spread;

/**
 * What one line or total comes to over all carcasses, in kilograms.
 *
 * @param sum of all carcasses together
 * @param mean of one carcass
 * @param between how far what is expected of one carcass strays from that of another, as one standard deviation; not stated of
 *     fewer than two
 * @param expected how far the sum strays by the spreads that the specification states, the carcasses varying independently of
 *     each other, as one standard deviation; not stated where a spread is missing, or where the share differs from carcass to
 *     carcass. It does not hold the doubt about the means themselves.
 */
public record BatchFigure(double sum, double mean, Spread between, Spread expected) {}
