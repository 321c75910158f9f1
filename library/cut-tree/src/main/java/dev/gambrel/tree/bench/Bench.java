package dev.gambrel.tree.bench;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import java.util.List;

/**
 * What the bench is told of a cut.
 *
 * @param matching how alike its left and right must be
 * @param ribs how many ribs it has, to be chosen at order where the least and the most differ
 * @param treatments tissue that is not taken off
 * @param after the parts beside it that come off before it
 * @param people how many people it takes, 1 where nothing was said
 */
public record Bench(
        Matching matching, AnatomicalCount ribs, List<Treatment> treatments, List<TradeName> after, int people) {
    /** Nothing said. */
    public static final Bench NONE =
            new Bench(new Matching.NotStated(), AnatomicalCount.NOT_STATED, List.of(), List.of(), 1);

    /** Copies the lists. */
    public Bench {
        treatments = List.copyOf(treatments);
        after = List.copyOf(after);
    }
}
