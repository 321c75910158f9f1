package dev.gambrel.compiler.lower;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import java.util.HashSet;
import java.util.Set;

/** The paths where only a stand-in for something unreadable stands, so that no rule concludes from it. */
final class Doubt {
    private static final TradeName UNREADABLE_LINE = TradeName.of("unreadable line");

    private final Set<TreePath> paths = new HashSet<>();

    void about(TreePath path) {
        paths.add(path);
    }

    /** Something that leaves a cut could not be read, so that nothing can be said of all that leaves it. */
    void aboutSomethingIn(TreePath cut) {
        about(cut.then(UNREADABLE_LINE));
    }

    Set<TreePath> paths() {
        return Set.copyOf(paths);
    }
}
