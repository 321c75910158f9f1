package dev.gambrel.json.trees;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.term.Judged;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Parts of every kind, nested a few deep. */
final class Parts {
    private Parts() {}

    static Arbitrary<List<Part>> parts(int depth) {
        Arbitrary<Part> leaf = Arbitraries.oneOf(bones(), trims(), losses(), rests());
        return Words.few(depth == 0 ? leaf : Arbitraries.oneOf(leaf, cuts(depth - 1), ways(depth - 1)));
    }

    private static Arbitrary<Part> cuts(int depth) {
        return Combinators.combine(
                        Words.names(),
                        Figures.pieces(),
                        Figures.shares(),
                        Descriptions.descriptions(),
                        Arbitraries.lazy(() -> parts(depth)),
                        homes(),
                        Words.few(Portions.portions()))
                .as(Cut::new);
    }

    private static Arbitrary<Part> ways(int depth) {
        Arbitrary<Cut> works = Combinators.combine(
                        Words.names(),
                        Descriptions.descriptions(),
                        Arbitraries.lazy(() -> parts(depth)),
                        homes(),
                        Words.few(Portions.portions()))
                .as((name, description, parts, home, portions) -> new Cut(
                        name, PieceCount.NOT_STATED, new Share.NotStated(), description, parts, home, portions));
        return Combinators.combine(works, Choices.choices()).as(Way::new);
    }

    private static Arbitrary<Part> bones() {
        return Combinators.combine(Words.names(), Words.nameLists(), Figures.shares(), homes(), Words.nameLists())
                .as(Part.Bone::new);
    }

    private static Arbitrary<Part> trims() {
        return Combinators.combine(Words.names(), rules(), Figures.shares(), homes(), Words.nameLists())
                .as(Part.Trim::new);
    }

    private static Arbitrary<Part> losses() {
        return Combinators.combine(Words.names(), Figures.shares()).as(Part.Loss::new);
    }

    private static Arbitrary<Part> rests() {
        return homes().map(Part.Rest::new);
    }

    static Arbitrary<Home> homes() {
        return Arbitraries.oneOf(
                Arbitraries.create(Home.Product::new),
                Words.names().map(Home.ToStream::new),
                Combinators.combine(Words.names(), leans()).as(Home.ToStream::new),
                Arbitraries.create(Home.NotStated::new));
    }

    private static Arbitrary<SourceLean> leans() {
        return Combinators.combine(Figures.expected(Dimension.SHARE), Arbitraries.of(Judged.values()))
                .as(SourceLean.Stated::new);
    }

    private static Arbitrary<TrimRule> rules() {
        Arbitrary<TrimRule.FatLimit> limits = Combinators.combine(
                        Figures.quantities(Dimension.LENGTH), Arbitraries.of(TrimRule.Where.values()))
                .as(TrimRule.FatLimit::new);
        return Arbitraries.oneOf(
                Combinators.combine(Words.few(limits), finishes()).as(TrimRule.FatCover::new),
                Words.names().map(TrimRule.Removal::new),
                Words.names().map(TrimRule.GlandRemoval::new),
                Arbitraries.create(TrimRule.SquareOff::new));
    }

    private static Arbitrary<TrimRule.FatFinish> finishes() {
        return Combinators.combine(Arbitraries.of(true, false), Arbitraries.of(true, false), Words.free())
                .as(TrimRule.FatFinish::new);
    }
}
