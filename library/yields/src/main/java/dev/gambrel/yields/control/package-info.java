/**
 * Statistical process control of cutting tests: charts that tell a change from chance, of one figure and of a whole cut, and what
 * tells cutters, lots or scales apart. Immutable values.
 */
package dev.gambrel.yields.control;
