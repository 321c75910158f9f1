package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.CutTree;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** All rules of a cut tree, in the order in which their findings are listed. */
public final class TreeRules {
    private static final List<Rule> RULES = List.of();

    private TreeRules() {}

    /**
     * Holds a tree against every rule.
     *
     * <p>Costs O(nodes). Findings are placed by {@link dev.gambrel.diagnostic.Place.InTree}.
     *
     * @param tree any tree
     * @return what was found; the tree may be used if none is an error
     */
    public static List<Diagnostic> check(CutTree tree) {
        return check(tree, path -> false);
    }

    /**
     * Holds a tree against every rule, and draws no conclusion from parts that could not be read.
     *
     * @param tree any tree
     * @param inDoubt says of a path whether what stands there is only a stand-in for something unreadable
     * @return what was found
     */
    public static List<Diagnostic> check(CutTree tree, Predicate<TreePath> inDoubt) {
        List<Diagnostic> found = new ArrayList<>();
        for (Rule rule : RULES) {
            rule.check(tree, inDoubt, found::add);
        }
        return found;
    }
}
