/** {@code gambrel tree}: writes the tree of a specification as JSON. */
package dev.gambrel.cli.tree;
