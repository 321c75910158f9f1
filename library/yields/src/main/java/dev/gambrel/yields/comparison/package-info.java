/**
 * Two specifications held against each other by what they mean: what breaks, tightens, loosens, gives other figures or is
 * only worded otherwise, and what a carcass gives by each. Immutable.
 */
package dev.gambrel.yields.comparison;
