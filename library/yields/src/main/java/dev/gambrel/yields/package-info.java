/**
 * What a carcass should give: expected weights with their spread, streams, totals and portions.
 *
 * <p>Start at {@link dev.gambrel.yields.Yields}. Every type is immutable and safe between threads; nothing is read,
 * written or logged. The maths works in double precision: mass is conserved to a relative 1e-12.
 */
package dev.gambrel.yields;
