package dev.gambrel.compiler;

import dev.gambrel.compiler.origin.Origins;
import dev.gambrel.compiler.origin.WrittenLines;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import java.util.List;
import java.util.Objects;

/**
 * A specification that was read without error.
 *
 * @param tree the cut tree; every rule holds for it
 * @param texts all texts that it was read from, what is used before what uses it
 * @param lines the lines that the tree was made from, for {@link #origins}
 */
public record Compilation(CutTree tree, List<SourceText> texts, WrittenLines lines) {
    /** Copies the list. */
    public Compilation {
        texts = List.copyOf(texts);
    }

    /**
     * Where each value of the tree is written, and what it rests on. Worked out at each call, O(lines): ask once and keep it.
     *
     * @return the origins
     */
    public Origins origins() {
        return new Origins(tree, lines);
    }

    /** Equal when tree and texts are, from which the lines follow. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Compilation that && tree.equals(that.tree) && texts.equals(that.texts);
    }

    @Override
    public int hashCode() {
        return Objects.hash(tree, texts);
    }
}
