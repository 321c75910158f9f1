package dev.gambrel.yields.comparison;

import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.comparison.fact.Stated;
import dev.gambrel.yields.comparison.fact.TreeFacts;
import java.util.List;

/**
 * Two specifications held against each other by what they mean.
 *
 * <p>Neither the order nor the layout of lines is a difference, nor is whether a tree came as text or as JSON. Quantities are
 * compared exactly and whatever their units; names without regard to case and Unicode form. An expectation is no limit:
 * another share alters figures, another limit tightens or loosens.
 *
 * <p>One change is told once. Of a cut that is gone or new nothing inside it is told; of a share that is changed neither the
 * weights below it nor the same share said of something further up, nor the rest that makes way for it, which is named with
 * it. Where a stream is gone and all that went to it goes to one new stream, the routes are part of that.
 *
 * <p>What is said in free words is compared word for word. Whether other words mean the same, only a person can say.
 *
 * @param changes every difference: of the carcass first, then down the earlier tree in its order, at each place what is only in
 *     the later tree last
 * @param renames what may be one thing under two names; asked, never concluded
 */
public record Comparison(List<Change> changes, List<PossibleRename> renames) {
    /** Copies the lists. */
    public Comparison {
        changes = List.copyOf(changes);
        renames = List.copyOf(renames);
    }

    /**
     * Compares two specifications, in time linear in what is written in them. Pure; safe between threads.
     *
     * @param before a tree in which {@link dev.gambrel.tree.rules.TreeRules} finds no error
     * @param after another
     * @return what differs
     */
    public static Comparison of(CutTree before, CutTree after) {
        Walk walk = new Walk();
        Stated one = TreeFacts.of(before);
        Stated other = TreeFacts.of(after);
        walk.both(one, other, List.of());
        StreamRoutes routes = StreamRoutes.of(walk);
        return new Comparison(routes.others(), Renames.among(walk.gone(), walk.appeared(), routes.renamed()));
    }

    /**
     * The changes of one effect.
     *
     * @param effect an effect
     * @return them in order
     */
    public List<Change> changes(Effect effect) {
        return changes.stream().filter(change -> change.effect() == effect).toList();
    }

    /**
     * Whether both mean the same, in the same words.
     *
     * @return true if nothing differs
     */
    public boolean isEmpty() {
        return changes.isEmpty();
    }
}
