package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Settles in which way each cut is worked in a run, from the top down.
 *
 * <p>Conditions take theirs first; the way that is the rule takes what they leave. A condition on the weight of a piece
 * splits a cut, since some pieces are lighter than others; the split that is expected is then taken as fixed, so that
 * figures below it have the spread of the pieces but not that of how many there are, and a piece that went one way has the
 * relative spread of all. With these approximations means are exact.
 */
public final class WaysOfWorking {
    private WaysOfWorking() {}

    /**
     * Whether a tree has ways at all.
     *
     * @param tree any tree
     * @return true if some cut is worked in ways
     */
    public static boolean areIn(CutTree tree) {
        return !WaysInTree.of(tree).isEmpty();
    }

    /**
     * Whether a condition of a tree asks what something weighs.
     *
     * @param tree any tree
     * @return true if the ways of a carcass may depend on its weight
     */
    public static boolean askForWeights(CutTree tree) {
        return WaysInTree.of(tree).values().stream()
                .flatMap(List::stream)
                .anyMatch(way ->
                        way.choice() instanceof Choice.When when && when.condition() instanceof Condition.Weighs);
    }

    /**
     * Makes the tree of a run.
     *
     * @param tree a tree in which {@link dev.gambrel.tree.rules.TreeRules} finds no error
     * @param working what the run asks for
     * @param weights what conditions may ask to be weighed
     * @return the tree without ways, or errors of {@link WorkingCode}
     */
    public static Result<Worked> settle(CutTree tree, Working working, Weights weights) {
        List<Diagnostic> found = new ArrayList<>();
        Map<TreePath, List<Way>> ways = WaysInTree.of(tree);
        Map<TreePath, List<Split>> orders = Orders.find(working.orders(), ways, found);
        Chooser chooser = new Chooser(orders, Grades.find(working.grades(), tree.carcass(), found), weights::carcass);
        if (!found.isEmpty()) {
            return Result.failed(found);
        }
        Map<TreePath, List<Split>> weighed = new HashMap<>();
        while (true) {
            WorkedTree round = WorkedTree.of(tree, chooser, weighed);
            if (!round.found().isEmpty()) {
                return Result.failed(round.found());
            } else if (round.toWeigh().isEmpty()) {
                return Result.of(round.worked(), List.of());
            }
            Function<TreePath, PieceWeight> pieces = weights.pieces(round.worked());
            round.toWeigh().forEach(cut -> weighed.put(cut, Chooser.byWeight(ways.get(cut), pieces.apply(cut))));
        }
    }
}
