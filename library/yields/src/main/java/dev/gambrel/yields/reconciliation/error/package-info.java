/**
 * What may be wrong on a sheet that does not add up: the smallest set of readings that the figures can tell apart, and never one of
 * several that look alike.
 */
package dev.gambrel.yields.reconciliation.error;
