package dev.gambrel.yields.testedcuts;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Way;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which cuts are worked in ways: how many pieces go each way is chosen, and no share that a carcass gives. */
final class WaysInTree {
    private final Set<TreePath> worked = new HashSet<>();

    private WaysInTree() {}

    static WaysInTree of(CutTree tree) {
        WaysInTree ways = new WaysInTree();
        ways.add(TreePath.ROOT, tree.parts());
        return ways;
    }

    private void add(TreePath above, List<Part> parts) {
        for (Part part : parts) {
            if (part instanceof Way way) {
                worked.add(above);
                add(above.then(way.name()), way.work().parts());
            } else if (part instanceof Cut cut) {
                add(above.then(cut.name()), cut.parts());
            }
        }
    }

    boolean isWorkedInWays(TreePath cut) {
        return worked.contains(cut);
    }
}
