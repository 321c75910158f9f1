/** Estimates by equation, worked out exactly from what was measured on a carcass. Immutable; safe between threads. */
package dev.gambrel.yields.estimate;
