package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.CutTree;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A specification as it is worked in one run: each way in use is a cut of its own within its cut, and no ways are left.
 *
 * @param tree the tree without ways
 * @param ways every way in use, those of one cut together, from the top down
 */
public record Worked(CutTree tree, List<WayUsed> ways) {
    /** Copies the list. */
    public Worked {
        ways = List.copyOf(ways);
    }

    /**
     * How many of the pieces go each way.
     *
     * @return parts of 1 by the address of the cut so worked
     */
    public Map<TreePath, Double> pieces() {
        Map<TreePath, Double> pieces = new HashMap<>();
        ways.forEach(way -> pieces.put(way.path(), way.split().pieces()));
        return pieces;
    }
}
