package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * A tree is no larger and no deeper than the limits, and its species has no more structures; found without recursion, so
 * that depth cannot hurt.
 */
final class TreeSize {
    private record Level(TreePath path, int depth, List<Part> parts) {}

    private TreeSize() {}

    static List<Diagnostic> check(CutTree tree, Limits limits) {
        List<Diagnostic> found = new ArrayList<>();
        long nodes = 0;
        Deque<Level> open = new ArrayDeque<>();
        open.push(new Level(TreePath.ROOT, 1, tree.parts()));
        while (!open.isEmpty() && found.isEmpty()) {
            Level level = open.pop();
            nodes += level.parts().size();
            if (level.depth() > limits.nesting()) {
                found.add(Diagnostic.of(TreeCode.TOO_DEEP, new Place.InTree(level.path(), Aspect.NAME))
                        .with("part", level.path().last())
                        .with("found", level.depth())
                        .with("allowed", limits.nesting())
                        .help("Look for a cut whose closing brace is missing."));
            } else {
                level.parts().forEach(part -> push(open, level, part));
            }
        }
        if (nodes > limits.nodes()) {
            found.add(Diagnostic.of(TreeCode.TOO_MANY_PARTS, new Place.InTree(TreePath.ROOT, Aspect.NAME))
                    .with("found", nodes)
                    .with("allowed", limits.nodes())
                    .help("Divide the specification into several, or raise the limit."));
        }
        if (found.isEmpty()) {
            checkSpecies(tree, limits, found);
        }
        return found;
    }

    /** Each cut may be held against each structure of the species, so these are few. */
    private static void checkSpecies(CutTree tree, Limits limits, List<Diagnostic> found) {
        long structures = 0;
        Deque<Piece> open = new ArrayDeque<>(tree.species().pieces());
        while (!open.isEmpty()) {
            Piece piece = open.pop();
            Piece.Anatomy anatomy = piece.anatomy();
            structures += 1L
                    + anatomy.bones().size()
                    + anatomy.muscles().size()
                    + anatomy.glands().size()
                    + piece.published().size();
            piece.parts().forEach(open::push);
        }
        if (structures > limits.structures()) {
            found.add(Diagnostic.of(TreeCode.TOO_MANY_STRUCTURES, new Place.InTree(TreePath.ROOT, Aspect.SPECIES))
                    .with("species", tree.species().name())
                    .with("found", structures)
                    .with("allowed", limits.structures())
                    .help("Leave out what no cut of this specification needs."));
        }
    }

    private static void push(Deque<Level> open, Level above, Part part) {
        if (part instanceof Way way) {
            push(open, above, way.work());
        } else if (part instanceof Cut cut && !cut.parts().isEmpty()) {
            open.push(new Level(above.path().then(cut.name()), above.depth() + 1, cut.parts()));
        }
    }
}
