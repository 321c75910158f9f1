/** Figures that are expected: a mean and how far it strays. Immutable values. */
package dev.gambrel.yields.figure;
