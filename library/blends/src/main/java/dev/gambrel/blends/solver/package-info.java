/** Linear programmes, and the one place that knows which library solves them. */
package dev.gambrel.blends.solver;
