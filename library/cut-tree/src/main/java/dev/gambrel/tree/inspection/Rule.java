package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.Diagnostic;
import java.util.function.Consumer;

/** One rule: from a tree to findings. */
public interface Rule {
    /** Hands every breach of the rule to {@code found}; pure, O(parts). */
    void check(Inspection inspection, Consumer<Diagnostic> found);
}
