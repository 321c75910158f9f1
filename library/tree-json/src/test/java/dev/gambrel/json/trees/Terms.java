package dev.gambrel.json.trees;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.tree.term.Refrigeration;
import dev.gambrel.tree.term.Term;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Terms of supply. */
final class Terms {
    private Terms() {}

    static Arbitrary<Term> terms() {
        return Arbitraries.oneOf(
                Combinators.combine(limits(Dimension.WEIGHT), outsides()).as(Term.Weight::new),
                Combinators.combine(limits(Dimension.LENGTH), outsides()).as(Term.Thickness::new),
                Combinators.combine(limits(Dimension.SHARE), Arbitraries.of(Judged.values()))
                        .as(Term.Lean::new),
                Arbitraries.of(Refrigeration.values()).map(Term.Refrigerated::new),
                Combinators.combine(limits(Dimension.TEMPERATURE), Words.free()).as(Term.Temperature::new),
                Combinators.combine(limits(Dimension.TIME), Words.free(), Words.free())
                        .as(Term.Age::new),
                limits(Dimension.TIME).map(Term.Life::new),
                Combinators.combine(Figures.counts(), Words.names()).as(Term.Pack::new),
                Words.names().map(Term.Claim::new),
                Words.names().map(Term.Label::new));
    }

    static Arbitrary<Outside> outsides() {
        Arbitrary<Outside> some = Arbitraries.integers()
                .between(2, Integer.MAX_VALUE)
                .flatMap(of -> Arbitraries.integers().between(1, of - 1).map(most -> new Outside.OutOf(most, of)));
        return Arbitraries.oneOf(some, Arbitraries.create(Outside.None::new));
    }

    private static Arbitrary<Limit> limits(Dimension dimension) {
        return Figures.limits(dimension).filter(limit -> !(limit instanceof Limit.NotStated));
    }
}
