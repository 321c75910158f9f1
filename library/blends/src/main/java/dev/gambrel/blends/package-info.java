/**
 * Blending tubs of trim to a lean target: two tubs by the square, the largest batch that the stocks give, the cheapest batch of a
 * given weight.
 *
 * <p>Maths is in {@code double}; weights in kilograms, lean in per cent. Values are immutable and safe between threads; the same
 * tubs in any order give the same blend.
 */
package dev.gambrel.blends;
