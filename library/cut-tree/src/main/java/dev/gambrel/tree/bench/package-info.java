/** What the bench is told of a cut besides its shape: pairs, order of work, tissue that is scored or left. Immutable. */
package dev.gambrel.tree.bench;
