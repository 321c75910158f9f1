package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;

/**
 * A way in which some of a cut is worked in a run.
 *
 * @param cut the cut's address
 * @param way the way, as the specification has it
 * @param split how much of the cut goes this way
 * @param ordered whether the run asked for it; if not, the specification settles it
 */
public record WayUsed(TreePath cut, Way way, Split split, boolean ordered) {
    /**
     * The address of the cut so worked.
     *
     * @return the cut's address and the way's name
     */
    public TreePath path() {
        return cut.then(way.name());
    }

    /**
     * Why it is worked so.
     *
     * @return "asked for", "as a rule", "standing share", or the condition: "when a piece is under 1.0 kg"
     */
    public String because() {
        if (ordered) {
            return "asked for";
        } else if (way.choice() instanceof Choice.When when) {
            return "when " + when.condition();
        }
        return way.choice() instanceof Choice.OfPieces ? "standing share" : "as a rule";
    }
}
