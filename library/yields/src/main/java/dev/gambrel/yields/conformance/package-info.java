/**
 * Whether a house's specification gives what a buyer requires, clause by clause: meets, fails, or not stated. Immutable; safe
 * between threads. Whoever sent the requirement is not trusted: nothing here reads a file, and work is linear in both trees.
 */
package dev.gambrel.yields.conformance;
