package dev.gambrel.json.trees;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Quantities, expectations, shares, ranges and counts. */
final class Figures {
    private static final BigInteger LARGEST =
            BigInteger.TEN.pow(Quantity.MAX_DIGITS).subtract(BigInteger.ONE);

    private Figures() {}

    static Arbitrary<BigDecimal> decimals() {
        Arbitrary<BigDecimal> usual = Arbitraries.integers()
                .between(-10_000, 10_000)
                .flatMap(
                        digits -> Arbitraries.integers().between(0, 3).map(scale -> BigDecimal.valueOf(digits, scale)));
        Arbitrary<BigDecimal> any = Arbitraries.bigIntegers()
                .between(LARGEST.negate(), LARGEST)
                .flatMap(digits -> Arbitraries.integers()
                        .between(0, Quantity.MAX_EXPONENT)
                        .map(scale -> new BigDecimal(digits, scale)));
        return Arbitraries.frequencyOf(Tuple.of(19, usual), Tuple.of(1, any));
    }

    static Arbitrary<Quantity> quantities(Dimension dimension) {
        Arbitrary<Unit> units = Arbitraries.of(Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == dimension)
                .toList());
        return Combinators.combine(decimals(), units).as(Quantity::new);
    }

    static Arbitrary<Unit> units() {
        return Arbitraries.of(Unit.values());
    }

    /** In any unit, or in none. */
    static Arbitrary<Quantity> quantities() {
        return Combinators.combine(decimals(), units()).as(Quantity::new);
    }

    static Arbitrary<Expected> expected(Dimension dimension) {
        Arbitrary<Quantity> quantity = quantities(dimension);
        return Arbitraries.oneOf(
                quantity.map(Expected.Mean::new),
                Combinators.combine(quantity, quantity).as(Expected.PlusMinus::new),
                Combinators.combine(quantity, quantity).as(Expected.CentralRange::new));
    }

    static Arbitrary<Share> shares() {
        Arbitrary<Expected> expected = expected(Dimension.SHARE);
        Arbitrary<Share.Derived> derived =
                Combinators.combine(expected, Words.names()).as(Share.Derived::new);
        Arbitrary<Share> stated = Combinators.combine(expected, Words.few(derived), Words.nameLists())
                .as(Share.Stated::new);
        Arbitrary<Share> estimated = Words.names().map(Share.Estimated::new);
        return Arbitraries.oneOf(stated, estimated, Arbitraries.create(Share.NotStated::new));
    }

    static Arbitrary<WeightBand> bands() {
        Arbitrary<Quantity> weight = quantities(Dimension.WEIGHT);
        Arbitrary<WeightBand> stated = Combinators.combine(weight, weight).as(WeightBand.Stated::new);
        return Arbitraries.oneOf(stated, Arbitraries.create(WeightBand.NotStated::new));
    }

    static Arbitrary<Limit> limits(Dimension dimension) {
        Arbitrary<Quantity> figure = quantities(dimension);
        return Arbitraries.oneOf(
                Combinators.combine(figure, figure).as(Limit.Between::new),
                figure.map(Limit.AtLeast::new),
                figure.map(Limit.AtMost::new),
                Arbitraries.create(Limit.NotStated::new));
    }

    static Arbitrary<Measure> measures(Dimension dimension) {
        return Arbitraries.oneOf(
                quantities(dimension).map(Measure.Stated::new), Arbitraries.create(Measure.NotStated::new));
    }

    static Arbitrary<PieceCount> pieces() {
        return Arbitraries.of(PieceCount.values());
    }

    static Arbitrary<Integer> counts() {
        return Arbitraries.integers().between(0, Integer.MAX_VALUE);
    }

    static Arbitrary<AnatomicalCount> anatomicalCounts() {
        return Combinators.combine(counts(), counts()).as(AnatomicalCount::new);
    }
}
