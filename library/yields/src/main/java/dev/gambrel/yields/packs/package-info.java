/**
 * Packs that all say the same weight: whether a batch passes its published test, shown by the packs that were weighed.
 *
 * <p>Weights are compared exactly; nothing is rounded before it is compared. Rules differ by country and change: every figure
 * carries its source, and a caution belongs beside every verdict. Immutable values.
 */
package dev.gambrel.yields.packs;
