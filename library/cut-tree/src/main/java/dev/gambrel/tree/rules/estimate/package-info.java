/** Rules of estimates by equation: names, dimensions, ranges. Embedders ask {@code TreeRules}. */
package dev.gambrel.tree.rules.estimate;
