package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** All rules of a cut tree, in the order in which their findings are listed. */
public final class TreeRules {
    private static final List<Rule> RULES = List.of(
            new DistinctNames(),
            new DeclaredStreams(),
            new DeclaredSources(),
            new KnownBases(),
            new OrderedRanges(),
            new PlausibleShares(),
            new PlausibleWeights(),
            new SingleSteps(),
            new ClosedShares(),
            new PossibleSpreads(),
            new AgreeingShares(),
            new WholeCuts(),
            new KnownAnatomy(),
            new BoneBalance(),
            new SkeletonNumbers(),
            new GlandRegions(),
            new PieceNames(),
            new Homes(),
            new PortionTargets(),
            new PublishedShares());

    private TreeRules() {}

    /**
     * Holds a tree against every rule, within the usual limits.
     *
     * <p>Costs O(nodes). Findings are placed by {@link dev.gambrel.diagnostic.Place.InTree}.
     *
     * @param tree any tree
     * @return what was found; the tree may be used if none is an error
     */
    public static List<Diagnostic> check(CutTree tree) {
        return check(tree, Limits.DEFAULT, Set.of());
    }

    /**
     * Holds a tree against every rule, and draws no conclusion from parts that could not be read.
     *
     * @param tree any tree
     * @param limits how many parts, and how deep, are taken; beyond them no other rule is asked
     * @param inDoubt paths where only a stand-in for something unreadable stands
     * @return what was found
     */
    public static List<Diagnostic> check(CutTree tree, Limits limits, Set<TreePath> inDoubt) {
        List<Diagnostic> found = new ArrayList<>(TreeSize.check(tree, limits));
        if (found.isEmpty()) {
            Inspection inspection = Inspection.of(tree, inDoubt);
            for (Rule rule : RULES) {
                rule.check(inspection, found::add);
            }
        }
        return found;
    }
}
