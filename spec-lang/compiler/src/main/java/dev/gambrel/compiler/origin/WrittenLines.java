package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Keyword;
import java.util.List;
import java.util.Map;

/**
 * The lines that a tree was made from.
 *
 * @param top the lines at the top of all files together, by keyword
 * @param parts those that the carcass is divided into
 * @param steps those that became steps between bases, in the order of the tree's steps
 * @param allowances those that allow warnings, in the order of the tree's allowances
 */
public record WrittenLines(
        Map<Keyword, List<Located>> top, List<Located> parts, List<Located> steps, List<Located> allowances) {
    /** Copies the lists. */
    public WrittenLines {
        top = Map.copyOf(top);
        parts = List.copyOf(parts);
        steps = List.copyOf(steps);
        allowances = List.copyOf(allowances);
    }

    /** The lines of one kind at the top. */
    List<Located> all(Keyword keyword) {
        return top.getOrDefault(keyword, List.of());
    }
}
