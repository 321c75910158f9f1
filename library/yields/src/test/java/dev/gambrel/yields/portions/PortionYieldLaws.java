package dev.gambrel.yields.portions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.Precedence;
import dev.gambrel.tree.portion.Slicing;
import dev.gambrel.yields.PortionedPiece;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.working.Pairs;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Nothing is lost: the portions, what the cuts take and what is left are the piece, in each way of portioning. */
class PortionYieldLaws {
    private static Expected grams(int amount) {
        return new Expected.Mean(Quantity.of(Integer.toString(amount), Unit.GRAM));
    }

    private static Expected mm(int amount, int deviation) {
        return new Expected.PlusMinus(millimetres(amount), millimetres(deviation));
    }

    private static Quantity millimetres(int amount) {
        return Quantity.of(Integer.toString(amount), Unit.MILLIMETRE);
    }

    private static PortionYield of(Estimate piece, Aim aim, int kerf, Expected length, int endGrams) {
        return of(piece, aim, kerf, length, endGrams, Pairs.ALIKE);
    }

    private static PortionYield of(Estimate piece, Aim aim, int kerf, Expected length, int endGrams, Pairs pairs) {
        Acceptance weightRules = new Acceptance(
                new Limit.NotStated(),
                new Limit.NotStated(),
                aim instanceof Aim.WeightAndThickness ? Precedence.WEIGHT : Precedence.NOT_STATED,
                new Measure.NotStated(),
                new Fewest.NotStated());
        Portion portion = new Portion(
                TradeName.of("steak"),
                aim,
                weightRules,
                new Slicing(new Measure.Stated(millimetres(kerf)), new Slicing.Length.Stated(length), ""),
                Finish.NONE,
                new Portion.EndPieces.Weighed(grams(endGrams), new Home.Product()),
                new Home.Product());
        return PortionYield.of(
                new PortionedPiece(new TreePath(List.of(TradeName.of("loin"))), portion, 2, 2, piece, pairs));
    }

    private static void addsUp(PortionYield portions) {
        double piece = portions.from().weight().mean();
        double number = portions.expectedNumber().orElseThrow();
        double all = number * portions.each().orElseThrow().mean()
                + portions.lostToKerf().orElse(0)
                + portions.expectedRemainder().orElseThrow();
        assertEquals(piece, all, 1e-12 * piece);
        assertEquals(
                piece,
                portions.expectedPortionsOfOne().orElseThrow()
                        + portions.lostToKerf().orElse(0)
                        + portions.expectedRemainder().orElseThrow(),
                1e-12 * piece);
        assertTrue(portions.expectedRemainder().orElseThrow() >= 0);
    }

    @Property
    void by_weight_by_thickness_and_by_number(
            @ForAll @DoubleRange(min = 0.1, max = 10) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 1.5) double cv,
            @ForAll @IntRange(min = 40, max = 900) int grams,
            @ForAll @IntRange(min = 8, max = 60) int thick,
            @ForAll @IntRange(max = 5) int kerf,
            @ForAll @IntRange(min = 100, max = 600) int length,
            @ForAll @IntRange(max = 200) int ends) {
        Estimate piece = new Estimate(mean, new Spread.Stated(cv * mean));
        Expected along = mm(length, (int) (0.1 * length));
        addsUp(of(piece, new Aim.Weight(grams(grams)), 0, along, ends));
        addsUp(of(piece, new Aim.WeightAndThickness(grams(grams), mm(thick, 1)), kerf, along, ends));
        addsUp(of(piece, new Aim.Thickness(mm(thick, 1)), kerf, along, ends));
        addsUp(of(piece, new Aim.Number(grams / 40), 0, along, ends));
    }

    /** What is promised of a part of the carcasses is never more than of all. */
    @Property(tries = 100)
    void more_carcasses_promise_no_less(
            @ForAll @DoubleRange(min = 0.1, max = 5) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double cv,
            @ForAll @IntRange(min = 40, max = 900) int grams,
            @ForAll @IntRange(min = 1, max = 60) int carcasses,
            @ForAll @DoubleRange(max = 1) double correlation,
            @ForAll @DoubleRange(min = 0.6, max = 0.99) double certainty) {
        Estimate piece = new Estimate(mean, new Spread.Stated(cv * mean));
        PortionYield steaks = of(piece, new Aim.Weight(grams(grams)), 0, mm(300, 10), 0, new Pairs(correlation));
        long promised = steaks.promised(
                        new Promise(certainty, new SeveralCarcasses(carcasses, new MeanDoubt.OfPart(0.02))))
                .orElseThrow();
        long more = steaks.promised(
                        new Promise(certainty, new SeveralCarcasses(carcasses + 1, new MeanDoubt.OfPart(0.02))))
                .orElseThrow();
        assertTrue(more >= promised);
    }
}
