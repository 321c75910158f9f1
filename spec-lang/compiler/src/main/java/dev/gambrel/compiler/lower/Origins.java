package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where in the texts each part of a tree is written. Built once, O(lines), when first asked. */
final class Origins {
    private final Program program;
    private final List<Located> steps;
    private final Map<TreePath, List<Located>> lines = new HashMap<>();

    Origins(Program program, List<Located> steps) {
        this.program = program;
        this.steps = steps;
        program.parts().forEach(part -> index(part, TreePath.ROOT));
    }

    private void index(Located located, TreePath above) {
        TreePath path = above.then(PartLowering.name(located.line()));
        lines.computeIfAbsent(path, p -> new ArrayList<>(1)).add(located);
        for (Statement statement : located.line().body()) {
            if (statement instanceof Declaration line && isPart(line.keyword())) {
                index(new Located(line, located.report()), path);
            }
        }
    }

    private static boolean isPart(Keyword keyword) {
        return switch (keyword) {
            case CUT_LINE, BONE_LINE, TRIM_LINE, REMOVE_LINE, SQUARE_LINE, LOSS_LINE, REST_LINE, PORTION_LINE -> true;
            default -> false;
        };
    }

    /** The same place with its text, or as it is if it is written nowhere. */
    Place written(Place place) {
        if (!(place instanceof Place.InTree tree)) {
            return place;
        }
        if (tree.aspect() == Aspect.TERM) {
            return inEstimate(tree);
        }
        return tree.path().equals(TreePath.ROOT) ? atTop(tree) : inBody(tree);
    }

    private Place inEstimate(Place.InTree tree) {
        return program.all(Keyword.ESTIMATE_LINE).stream()
                .filter(line ->
                        TreePath.ROOT.then(PartLowering.name(line.line())).equals(tree.path()))
                .findFirst()
                .map(line -> located(tree, line, Aspect.TERM, tree.index()))
                .orElse(tree);
    }

    private Place inBody(Place.InTree tree) {
        List<Located> found = lines.getOrDefault(tree.path(), List.of());
        if (found.isEmpty()) {
            return tree;
        }
        boolean nthLine = tree.aspect() == Aspect.NAME && tree.index() < found.size();
        Located located = found.get(nthLine ? tree.index() : 0);
        int index = nthLine ? 0 : tree.index();
        return located(tree, located, tree.aspect(), index);
    }

    private Place atTop(Place.InTree tree) {
        List<Located> found =
                switch (tree.aspect()) {
                    case STREAM, LEAN -> program.all(Keyword.STREAM_LINE);
                    case SOURCE -> program.all(Keyword.SOURCE_LINE);
                    case SPECIES -> program.all(Keyword.SPECIES_LINE);
                    case STEP -> steps;
                    case MEASURE -> program.all(Keyword.MEASURE_LINE);
                    case ESTIMATE -> program.all(Keyword.ESTIMATE_LINE);
                    default -> program.all(Keyword.CARCASS_LINE);
                };
        if (found.isEmpty()) {
            return tree;
        }
        boolean counted = tree.index() < found.size();
        Located located = found.get(counted ? tree.index() : 0);
        boolean byName = tree.aspect() == Aspect.STREAM || tree.aspect() == Aspect.SOURCE;
        return located(tree, located, byName ? Aspect.NAME : tree.aspect(), 0);
    }

    private static Place located(Place.InTree tree, Located located, Aspect aspect, int index) {
        return new Place.Written(tree, located.report().at(AspectSpans.of(located.line(), aspect, index)));
    }
}
