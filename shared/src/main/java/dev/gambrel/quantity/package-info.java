/** Exact decimal quantities with the unit as written. Immutable; safe between threads. */
package dev.gambrel.quantity;
