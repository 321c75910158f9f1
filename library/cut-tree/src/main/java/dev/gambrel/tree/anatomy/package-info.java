/** What the trade knows of an animal: pieces, bones, muscles, glands, counts, and what is published. Immutable values. */
package dev.gambrel.tree.anatomy;
