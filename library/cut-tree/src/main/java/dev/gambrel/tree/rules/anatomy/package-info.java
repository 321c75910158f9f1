/** What holds of the animal: bones, glands, ribs, the names of pieces, and what print says that they weigh. */
package dev.gambrel.tree.rules.anatomy;
