package dev.gambrel.compiler.restate;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Source;
import java.util.List;

/**
 * The shares of one cut, which change together or not at all, since they close.
 *
 * @param cut its address; the root for the carcass
 * @param parts what its lines shall state; a part that is not among them keeps its line
 * @param source what the new figures rest on
 */
public record RestatedCut(TreePath cut, List<RestatedShare> parts, Source source) {
    /** Copies the list. */
    public RestatedCut {
        parts = List.copyOf(parts);
    }
}
