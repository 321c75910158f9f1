/**
 * Millions of carcasses at once: a tree compiled to flat arrays, the shares that differ from carcass to carcass put in for
 * each. A {@link dev.gambrel.yields.batch.BatchPlan} is immutable; a worker belongs to one thread.
 */
package dev.gambrel.yields.batch;
