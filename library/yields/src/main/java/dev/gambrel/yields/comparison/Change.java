package dev.gambrel.yields.comparison;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.TreePath;
import java.util.List;

/**
 * One difference in meaning.
 *
 * @param of the name of what it is about, in its path: "leg / topside" or "stream mince"
 * @param what what about it: "fat cover at any point", or what it is where it is gone or new
 * @param was what the earlier one says
 * @param is what the later one says
 * @param effect what that does
 * @param givesWay of a share, the part that takes up the difference and so is no change of its own; empty where none does
 */
public record Change(String of, String what, Said was, Said is, Effect effect, List<TreePath> givesWay) {
    /** Copies the list. */
    public Change {
        givesWay = List.copyOf(givesWay);
    }

    /**
     * What about the part is said otherwise.
     *
     * @return the aspect by which either text is asked
     */
    public Aspect aspect() {
        return stated().place().aspect();
    }

    /**
     * Which part.
     *
     * @return its path in the later tree, or in the earlier one where it is gone
     */
    public TreePath path() {
        return stated().place().path();
    }

    private Said stated() {
        return is instanceof Said.Stated ? is : was;
    }
}
