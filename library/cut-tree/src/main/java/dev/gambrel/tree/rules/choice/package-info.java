/** What holds of ways of working: one is the rule, shares are all of the pieces, conditions leave nothing out. */
package dev.gambrel.tree.rules.choice;
