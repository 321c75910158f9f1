package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.TreePath;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The lines that declare parts and portions, by path: O(lines). */
final class PartLines {
    private final Map<TreePath, List<Located>> lines = new HashMap<>();

    PartLines(List<Located> parts) {
        parts.forEach(part -> index(part, TreePath.ROOT));
    }

    private void index(Located located, TreePath above) {
        TreePath path = above.then(located.line().name());
        lines.computeIfAbsent(path, p -> new ArrayList<>(1)).add(located);
        for (Statement statement : located.line().body()) {
            if (statement instanceof Declaration line && isPart(line.keyword())) {
                index(new Located(line, located.report()), path);
            }
        }
    }

    private static boolean isPart(Keyword keyword) {
        return switch (keyword) {
            case CUT_LINE,
                    WORKED_LINE,
                    BONE_LINE,
                    TRIM_LINE,
                    REMOVE_LINE,
                    SQUARE_LINE,
                    LOSS_LINE,
                    REST_LINE,
                    PORTION_LINE -> true;
            default -> false;
        };
    }

    List<Located> at(TreePath path) {
        return lines.getOrDefault(path, List.of());
    }
}
