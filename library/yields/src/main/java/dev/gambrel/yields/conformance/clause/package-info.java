/** What a text lays down, clause by clause: taken out of a tree, each with its place. Immutable. */
package dev.gambrel.yields.conformance.clause;
