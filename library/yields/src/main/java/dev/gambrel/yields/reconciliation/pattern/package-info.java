/**
 * Mistakes with a pattern, such as a tray that was not tared at every weighing: how much of what does not fit each would explain. They are
 * offered with their evidence and never applied.
 */
package dev.gambrel.yields.reconciliation.pattern;
