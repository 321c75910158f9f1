package dev.gambrel.json;

import dev.gambrel.diagnostic.Place;
import dev.gambrel.tree.CutTree;
import java.util.function.UnaryOperator;

/**
 * A tree that was read from JSON, and where each part of it is written.
 *
 * @param tree the tree
 * @param written from a place in the tree to where it stands in the text; a place that is in no tree stays as it is. It holds the
 *     text, and is not safe between threads
 */
public record PlacedTree(CutTree tree, UnaryOperator<Place> written) {}
