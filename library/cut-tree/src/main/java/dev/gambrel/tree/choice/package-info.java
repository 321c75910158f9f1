/** Which of several ways a cut is worked in: as a rule, in shares, under a condition, or when a run asks for it. */
package dev.gambrel.tree.choice;
