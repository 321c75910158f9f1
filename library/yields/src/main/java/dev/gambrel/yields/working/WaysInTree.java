package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Way;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every cut of a tree that is worked in ways, by its address, from the top down. */
final class WaysInTree {
    private final Map<TreePath, List<Way>> found = new LinkedHashMap<>();

    private WaysInTree() {}

    static Map<TreePath, List<Way>> of(CutTree tree) {
        WaysInTree ways = new WaysInTree();
        ways.look(tree.parts(), TreePath.ROOT);
        return ways.found;
    }

    private void look(List<Part> parts, TreePath path) {
        List<Way> here = among(parts);
        if (!here.isEmpty()) {
            found.put(path, here);
        }
        for (Part part : parts) {
            if (part instanceof Way way) {
                look(way.work().parts(), path.then(way.name()));
            } else if (part instanceof Cut cut) {
                look(cut.parts(), path.then(cut.name()));
            }
        }
    }

    /** The ways among the parts of one cut. */
    static List<Way> among(List<Part> parts) {
        List<Way> ways = new ArrayList<>(0);
        for (Part part : parts) {
            if (part instanceof Way way) {
                ways.add(way);
            }
        }
        return ways;
    }
}
