/**
 * From several cutting tests of one specification to the house's own shares of each of its cuts: what the tests found, beside what is
 * stated. Immutable values.
 */
package dev.gambrel.yields.testedcuts;
