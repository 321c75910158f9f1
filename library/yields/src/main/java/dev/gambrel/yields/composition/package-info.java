/** Shares of a whole by their ratios: what adds up to 100 % is compared and averaged in logarithms of ratios. Immutable. */
package dev.gambrel.yields.composition;
