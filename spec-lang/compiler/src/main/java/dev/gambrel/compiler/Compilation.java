package dev.gambrel.compiler;

import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import java.util.List;

/**
 * A specification that was read without error.
 *
 * @param tree the cut tree; every rule holds for it
 * @param texts all texts that it was read from, what is used before what uses it
 */
public record Compilation(CutTree tree, List<SourceText> texts) {
    /** Copies the list. */
    public Compilation {
        texts = List.copyOf(texts);
    }
}
