package dev.gambrel.json.trees;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.Allowance;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Side;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Standing;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.term.Judged;
import java.time.LocalDate;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Cut trees that hold every variant of every kind of thing; most of them break rules of the trade. */
public final class CutTrees {
    private CutTrees() {}

    /**
     * Any tree with units that fit, counts from 0 up, and decimals without exponent.
     *
     * @return trees up to three cuts deep
     */
    public static Arbitrary<CutTree> any() {
        return Combinators.combine(
                        specifications(),
                        carcasses(),
                        AllSpecies.species(),
                        Words.few(streams()),
                        Words.few(sources()),
                        Parts.parts(3),
                        Words.freeLists())
                .as(CutTree::new);
    }

    private static Arbitrary<Specification> specifications() {
        Arbitrary<Allowance> allowances = Combinators.combine(
                        Words.nameLists().map(TreePath::new), Words.free(), Words.free())
                .as(Allowance::new);
        return Combinators.combine(
                        Words.free(),
                        Figures.counts(),
                        standings(),
                        Words.few(allowances),
                        Arbitraries.of(Side.values()),
                        Words.few(Terms.terms()))
                .as(Specification::new);
    }

    private static Arbitrary<Standing> standings() {
        Arbitrary<Standing.From> days = Arbitraries.longs()
                .between(0, 60_000)
                .map(LocalDate::ofEpochDay)
                .map(Standing.From.Day::new);
        Arbitrary<Standing.From> from = Arbitraries.oneOf(Arbitraries.just(new Standing.From.NotStated()), days);
        return Combinators.combine(Arbitraries.integers().between(0, 99), from, Words.free())
                .as(Standing::new);
    }

    private static Arbitrary<Carcass> carcasses() {
        Arbitrary<Basis> bases = Arbitraries.of(Basis.values());
        Arbitrary<BasisStep> steps = Combinators.combine(bases, bases, Words.names(), Figures.expected(Dimension.SHARE))
                .as(BasisStep::new);
        return Combinators.combine(
                        bases,
                        Words.freeLists(),
                        Figures.bands(),
                        Words.few(steps),
                        Words.few(Choices.grades()),
                        AllPredictors.predictors())
                .as(Carcass::new);
    }

    private static Arbitrary<Stream> streams() {
        Arbitrary<Stream.Lean> stated = Combinators.combine(
                        Figures.quantities(Dimension.SHARE), Arbitraries.of(Judged.values()))
                .as(Stream.Lean.Stated::new);
        return Combinators.combine(
                        Words.names(),
                        Arbitraries.of(Stream.Kind.values()),
                        Arbitraries.oneOf(stated, Arbitraries.create(Stream.Lean.NotStated::new)))
                .as(Stream::new);
    }

    private static Arbitrary<Source> sources() {
        return Combinators.combine(Words.names(), Arbitraries.of(Source.Kind.values()), Words.free())
                .as(Source::new);
    }
}
