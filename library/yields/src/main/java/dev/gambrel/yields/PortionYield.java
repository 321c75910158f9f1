package dev.gambrel.yields;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Portion;

/**
 * What a portion comes to. The pieces of a carcass are taken as alike, and each is portioned by itself.
 *
 * @param cut the cut that is portioned, once trimmed
 * @param portion the portion as written
 * @param pieces how many pieces there are of the cut; what is expected where only some are worked in this way
 * @param onePiece the portions from one piece
 */
public record PortionYield(TreePath cut, Portion portion, double pieces, Portioning onePiece) {
    /**
     * The expected number of portions from all pieces of the carcass.
     *
     * @return the mean number
     */
    public double expectedNumberFromAll() {
        return pieces * onePiece.expectedNumber();
    }

    /**
     * What is expected to be left of all pieces together.
     *
     * @return kilograms
     */
    public double expectedRemainderOfAll() {
        return pieces * onePiece.expectedRemainder();
    }
}
