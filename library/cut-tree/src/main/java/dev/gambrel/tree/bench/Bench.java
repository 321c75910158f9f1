package dev.gambrel.tree.bench;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.term.Term;
import java.util.List;

/**
 * What is told of a cut besides what it is: to the bench, and as terms of supply.
 *
 * @param matching how alike its left and right must be
 * @param ribs how many ribs it has, to be chosen at order where the least and the most differ
 * @param treatments tissue that is not taken off
 * @param after the parts beside it that come off before it
 * @param people how many people it takes, 1 where nothing was said
 * @param terms what is undertaken, or in a requirement asked for: weight, lean, cold, age, pack, claims
 */
public record Bench(
        Matching matching,
        AnatomicalCount ribs,
        List<Treatment> treatments,
        List<TradeName> after,
        int people,
        List<Term> terms) {
    /** Nothing said. */
    public static final Bench NONE =
            new Bench(new Matching.NotStated(), AnatomicalCount.NOT_STATED, List.of(), List.of(), 1);

    /** Copies the lists. */
    public Bench {
        treatments = List.copyOf(treatments);
        after = List.copyOf(after);
        terms = List.copyOf(terms);
    }

    /**
     * What the bench is told, without terms of supply.
     *
     * @param matching how alike its left and right must be
     * @param ribs how many ribs it has
     * @param treatments tissue that is not taken off
     * @param after the parts beside it that come off before it
     * @param people how many people it takes, 1 where nothing was said
     */
    public Bench(
            Matching matching, AnatomicalCount ribs, List<Treatment> treatments, List<TradeName> after, int people) {
        this(matching, ribs, treatments, after, people, List.of());
    }

    /**
     * The same with terms of supply.
     *
     * @param laidDown the terms
     * @return what is told
     */
    public Bench withTerms(List<Term> laidDown) {
        return new Bench(matching, ribs, treatments, after, people, laidDown);
    }
}
