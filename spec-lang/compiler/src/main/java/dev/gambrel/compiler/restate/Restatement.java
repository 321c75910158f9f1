package dev.gambrel.compiler.restate;

import dev.gambrel.diagnostic.TreePath;
import java.util.List;

/**
 * A specification with new shares: the files that change, each held against every rule.
 *
 * @param texts the files that change, in the order in which they were read; none where every line states its new share already
 * @param cuts the cuts of which a line changes
 */
public record Restatement(List<RestatedText> texts, List<TreePath> cuts) {
    /** Copies the lists. */
    public Restatement {
        texts = List.copyOf(texts);
        cuts = List.copyOf(cuts);
    }
}
