/**
 * A cutting test: what was weighed of the parts of a specification, brought into balance, with what does not fit. Weights are in kilograms and
 * of all pieces together.
 */
package dev.gambrel.yields.cuttingtest;
