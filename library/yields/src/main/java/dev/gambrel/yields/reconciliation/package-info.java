/**
 * Weighings of a cut and its parts brought into balance, each according to how well it is known; in two passes over the tree.
 * What does not fit is told as figures, here for each reading and each cut, in {@code error} for what may be wrong.
 */
package dev.gambrel.yields.reconciliation;
