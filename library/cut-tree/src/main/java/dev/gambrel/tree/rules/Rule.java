package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Diagnostic;
import java.util.function.Consumer;

/** One rule: from a tree to findings. */
interface Rule {
    void check(Inspection inspection, Consumer<Diagnostic> found);
}
