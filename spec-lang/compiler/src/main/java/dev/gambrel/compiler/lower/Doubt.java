package dev.gambrel.compiler.lower;

import dev.gambrel.diagnostic.TreePath;
import java.util.HashSet;
import java.util.Set;

/** The paths where only a stand-in for something unreadable stands, so that no rule concludes from it. */
final class Doubt {
    private final Set<TreePath> paths = new HashSet<>();

    void about(TreePath path) {
        paths.add(path);
    }

    Set<TreePath> paths() {
        return Set.copyOf(paths);
    }
}
