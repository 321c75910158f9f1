package dev.gambrel.yields.testedcuts;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;

/**
 * A part of a cut, and what the specification states of it.
 *
 * @param path its address; of what the trims leave of a cut that of the cut
 * @param kind what it is
 * @param name in print
 * @param stated its share of the cut, a part of 1, with its spread between carcasses; that of a rest follows from the others
 * @param isStated false where the specification states no share, which is not 0
 */
public record TestedPart(TreePath path, Kind kind, String name, Estimate stated, boolean isStated) {
    static TestedPart of(YieldPlan plan, int node) {
        return new TestedPart(
                plan.node(node).path(),
                plan.node(node).kind(),
                plan.node(node).name(),
                Estimate.of(plan.share(node), plan.shareVariance(node)),
                plan.isShareStated(node));
    }

    /**
     * Whether a line of the specification states its share: it does not of a rest or of what trims leave.
     *
     * @return true if there is a share to write
     */
    public boolean hasLine() {
        return kind != Kind.REST && kind != Kind.TRIMMED;
    }
}
