/** What is measured on a carcass, and the published equations that estimate from it. Immutable; safe between threads. */
package dev.gambrel.tree.estimate;
