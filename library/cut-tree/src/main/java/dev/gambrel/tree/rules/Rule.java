package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.CutTree;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** One rule: from a tree to findings. */
interface Rule {
    void check(CutTree tree, Predicate<TreePath> inDoubt, Consumer<Diagnostic> found);
}
