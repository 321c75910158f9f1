package dev.gambrel.json.trees;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Precedence;
import dev.gambrel.tree.portion.Slicing;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Portions of every kind. */
final class Portions {
    private Portions() {}

    static Arbitrary<Portion> portions() {
        return Combinators.combine(Words.names(), aims(), acceptances(), slicings(), finishes(), ends(), Parts.homes())
                .as(Portion::new);
    }

    private static Arbitrary<Aim> aims() {
        return Arbitraries.oneOf(
                Figures.expected(Dimension.WEIGHT).map(Aim.Weight::new),
                Figures.expected(Dimension.LENGTH).map(Aim.Thickness::new),
                Combinators.combine(Figures.expected(Dimension.WEIGHT), Figures.expected(Dimension.LENGTH))
                        .as(Aim.WeightAndThickness::new),
                Figures.counts().map(Aim.Number::new),
                Arbitraries.create(Aim.Open::new));
    }

    private static Arbitrary<Acceptance> acceptances() {
        Arbitrary<Fewest> fewest = Arbitraries.oneOf(
                Combinators.combine(Figures.counts(), Arbitraries.of(Fewest.Whole.values()))
                        .as(Fewest.From::new),
                Arbitraries.create(Fewest.NotStated::new));
        return Combinators.combine(
                        Figures.limits(Dimension.WEIGHT),
                        Figures.limits(Dimension.LENGTH),
                        Arbitraries.of(Precedence.values()),
                        Figures.measures(Dimension.WEIGHT),
                        fewest,
                        Terms.outsides())
                .as(Acceptance::new);
    }

    private static Arbitrary<Slicing> slicings() {
        Arbitrary<Slicing.Length> lengths = Arbitraries.oneOf(
                Figures.expected(Dimension.LENGTH).map(Slicing.Length.Stated::new),
                Arbitraries.create(Slicing.Length.NotStated::new));
        return Combinators.combine(Figures.measures(Dimension.LENGTH), lengths, Words.free())
                .as(Slicing::new);
    }

    private static Arbitrary<Finish> finishes() {
        Arbitrary<Finish.Binding> bindings = Arbitraries.oneOf(
                Figures.counts().map(Finish.Binding.Tied::new),
                Figures.quantities(Dimension.LENGTH).map(Finish.Binding.TiedEvery::new),
                Figures.quantities(Dimension.LENGTH).map(Finish.Binding.Netted::new),
                Arbitraries.create(Finish.Binding.NotStated::new));
        Arbitrary<Finish.Pack> packs = Arbitraries.oneOf(
                Combinators.combine(Figures.counts(), Words.names()).as(Finish.Pack.Together::new),
                Arbitraries.create(Finish.Pack.NotStated::new));
        Arbitrary<Finish.Tare> tares = Combinators.combine(Words.names(), Figures.quantities(Dimension.WEIGHT))
                .as(Finish.Tare::new);
        return Combinators.combine(bindings, packs, Words.few(tares)).as(Finish::new);
    }

    private static Arbitrary<Portion.EndPieces> ends() {
        return Arbitraries.oneOf(
                Parts.homes().map(Portion.EndPieces.Sent::new),
                Combinators.combine(Figures.expected(Dimension.WEIGHT), Parts.homes())
                        .as(Portion.EndPieces.Weighed::new),
                Arbitraries.create(Portion.EndPieces.NotStated::new));
    }
}
