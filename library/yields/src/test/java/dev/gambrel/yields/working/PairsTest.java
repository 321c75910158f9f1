package dev.gambrel.yields.working;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.kilograms;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.portioned;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.row;
import static dev.gambrel.yields.Sheet.sd;
import static dev.gambrel.yields.Sheet.to;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.portions.PortionYield;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PairsTest {
    private static final CutTree LEGS = hogget(
            portioned(pair("leg", "33 ± 0.9"), "steak", "0.3", to("mince")), cut("neck", "5 ± 0.4"), rest("mince"));

    private static ExpectedYields of(Pairs pairs) {
        return Yields.of(LEGS, Working.AS_WRITTEN.with(pairs))
                .forCarcass(kilograms("22", Basis.COLD))
                .orElseThrow();
    }

    private static double sdOfOneLeg(Pairs pairs) {
        return sd(row(of(pairs), "leg").onePiece().orElseThrow());
    }

    /** By hand: both legs 0.198 kg; half of it, its √2nd part, and √(2 (1 + 0.62)) = 1.8 of it. */
    @Test
    void one_leg_strays_by_more_the_less_it_has_to_do_with_the_other() {
        assertEquals(0.099, sdOfOneLeg(Pairs.ALIKE), 1e-12);
        assertEquals(0.198 / Math.sqrt(2), sdOfOneLeg(Pairs.INDEPENDENT), 1e-12);
        assertEquals(0.11, sdOfOneLeg(new Pairs(0.62)), 1e-12);
    }

    @Test
    void pairs_are_alike_unless_something_else_is_said() {
        ExpectedYields yields =
                Yields.of(LEGS).forCarcass(kilograms("22", Basis.COLD)).orElseThrow();
        assertEquals(Pairs.ALIKE, yields.pairs());
        assertEquals(0.099, sd(row(yields, "leg").onePiece().orElseThrow()), 1e-12);
    }

    @Test
    void the_weight_of_both_and_the_mean_of_one_stay_as_they_are() {
        assertEquals(
                row(of(Pairs.ALIKE), "leg").allPieces(),
                row(of(Pairs.INDEPENDENT), "leg").allPieces());
        assertEquals(
                3.63, row(of(Pairs.INDEPENDENT), "leg").onePiece().orElseThrow().mean(), 1e-12);
    }

    @Test
    void what_there_is_one_of_is_no_pair() {
        assertEquals(
                sd(row(of(Pairs.INDEPENDENT), "neck").allPieces().orElseThrow()),
                sd(row(of(Pairs.INDEPENDENT), "neck").onePiece().orElseThrow()));
    }

    @Test
    void a_leg_that_strays_further_gives_a_number_of_steaks_that_strays_further() {
        assertTrue(steaksFromOneLeg(Pairs.INDEPENDENT) > steaksFromOneLeg(Pairs.ALIKE));
    }

    private static double steaksFromOneLeg(Pairs pairs) {
        PortionYield steak = PortionYield.of(of(pairs)).get(0);
        return steak.counted().orElseThrow().numberDeviation().orElseThrow();
    }

    @Test
    void a_spread_that_is_not_stated_stays_so() {
        Estimate open = new Estimate(7.26, Spread.NOT_STATED);
        assertEquals(new Estimate(3.63, Spread.NOT_STATED), Pairs.INDEPENDENT.onePiece(open, 2, 2));
    }

    /** Of 2 topsides 1.4 are worked as steaks: one of them strays as one of 2 does. */
    @Test
    void one_of_some_pieces_strays_as_one_of_all() {
        Pairs pairs = new Pairs(0.5);
        Estimate all = pairs.onePiece(new Estimate(1.5, new Spread.Stated(0.08)), 2, 2);
        Estimate some = pairs.onePiece(new Estimate(1.5, new Spread.Stated(0.08)).times(0.7), 2, 1.4);
        assertEquals(all.mean(), some.mean(), 1e-15);
        assertEquals(sd(all), sd(some), 1e-15);
    }

    @Property
    void two_pieces_put_together_again_stray_as_both(
            @ForAll @DoubleRange(min = 0, max = 1) double correlation,
            @ForAll @DoubleRange(min = 0, max = 5) double spread) {
        double one = sd(new Pairs(correlation).onePiece(new Estimate(10, new Spread.Stated(spread)), 2, 2));
        assertEquals(spread, Math.sqrt(2 * one * one + 2 * correlation * one * one), 1e-12 * (1 + spread));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void a_correlation_is_from_none_to_all(double correlation) {
        assertThrows(IllegalArgumentException.class, () -> new Pairs(correlation));
    }
}
