package dev.gambrel.yields;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Portion;

/**
 * A piece that is portioned. The pieces of a carcass are taken as alike, and each is portioned by itself.
 *
 * @param cut the cut that is portioned, once trimmed
 * @param portion the portion as written
 * @param ofCarcass how many pieces of the cut a carcass has, whichever way they are worked
 * @param pieces how many pieces there are of the cut; what is expected where only some are worked in this way
 * @param weight kilograms of one piece
 */
public record PortionedPiece(TreePath cut, Portion portion, int ofCarcass, double pieces, Estimate weight) {}
