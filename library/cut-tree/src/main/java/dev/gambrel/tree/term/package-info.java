/** What is undertaken or required besides the cut itself: weight, lean, cold, age, pack, claims. Immutable. */
package dev.gambrel.tree.term;
