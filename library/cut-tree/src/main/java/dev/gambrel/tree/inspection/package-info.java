/** A tree with what several rules look up, found once. For the rules; embedders ask {@code TreeRules}. */
package dev.gambrel.tree.inspection;
