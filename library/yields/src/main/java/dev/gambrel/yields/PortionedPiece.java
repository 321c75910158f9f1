package dev.gambrel.yields;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Portion;

/**
 * A piece that is portioned. The pieces of a carcass are taken as alike, and each is portioned by itself.
 *
 * @param cut the cut that is portioned, once trimmed
 * @param portion the portion as written
 * @param pieces how many pieces there are of the cut
 * @param weight kilograms of one piece
 */
public record PortionedPiece(TreePath cut, Portion portion, int pieces, Estimate weight) {}
