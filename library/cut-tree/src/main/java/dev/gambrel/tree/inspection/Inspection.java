package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.CutTree;
import java.util.List;
import java.util.Set;

/**
 * A tree under inspection with what several rules look up, found once.
 *
 * @param tree the tree
 * @param pieces its species by name
 * @param sites every place where something is divided, carcass first
 */
public record Inspection(CutTree tree, PieceIndex pieces, List<Site> sites) {
    /** Looks a tree over once, O(parts); what stands at paths in doubt is not concluded from. */
    public static Inspection of(CutTree tree, Set<TreePath> inDoubt) {
        PieceIndex pieces = new PieceIndex(tree.species());
        return new Inspection(tree, pieces, Sites.of(tree, pieces, inDoubt));
    }
}
