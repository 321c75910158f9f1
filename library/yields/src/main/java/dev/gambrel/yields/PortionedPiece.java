package dev.gambrel.yields;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.Slicing;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.working.Pairs;

/**
 * A piece that is portioned. Each piece of a carcass is portioned by itself.
 *
 * @param cut the cut that is portioned, once trimmed
 * @param portion the portion as written
 * @param ofCarcass how many pieces of the cut a carcass has, whichever way they are worked
 * @param pieces how many pieces there are of the cut; what is expected where only some are worked in this way
 * @param weight kilograms of one piece
 * @param pairs how the pieces of a carcass vary together, by which the weight of one strays
 */
public record PortionedPiece(
        TreePath cut, Portion portion, int ofCarcass, double pieces, Estimate weight, Pairs pairs) {
    /** A milligram: what is lighter is no portion. */
    private static final double LIGHTEST_PORTION = 1e-6;
    /** A micrometre: what is thinner is no slice. */
    private static final double THINNEST_SLICE = 1e-3;

    /** What a tree that keeps the rules never says is not worked out. */
    static boolean isSomething(Portion portion) {
        boolean counts = !(portion.aim() instanceof Aim.Number into) || into.number() > 0;
        boolean loses = portion.slicing().kerf() instanceof Measure.Stated kerf
                && kerf.value().amount().signum() < 0;
        boolean endless = portion.slicing().length() instanceof Slicing.Length.Stated length
                && length.expected().mean() <= 0;
        boolean ends = portion.endPieces() instanceof Portion.EndPieces.Weighed weighed
                && weighed.weight().mean() < 0;
        return counts
                && !loses
                && !endless
                && !ends
                && portion.aim()
                        .targetWeight()
                        .filter(w -> w.mean() < LIGHTEST_PORTION)
                        .isEmpty()
                && portion.aim()
                        .targetThickness()
                        .filter(t -> t.mean() < THINNEST_SLICE)
                        .isEmpty();
    }
}
