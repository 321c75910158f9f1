/** A tree as flat arrays, from which everything about expected weights is worked out. Immutable. */
package dev.gambrel.yields.plan;
