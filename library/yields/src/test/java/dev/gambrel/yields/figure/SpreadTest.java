package dev.gambrel.yields.figure;

import static dev.gambrel.yields.Sheet.bone;
import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.row;
import static dev.gambrel.yields.Sheet.sd;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import org.junit.jupiter.api.Test;

class SpreadTest {
    private static final ExpectedYields LEG = yields(
            hogget(pair("leg", "33.0 ± 0.9", cut("topside", "21.0 ± 0.9"), rest("mince")), rest("mince")), "22.0");

    private static Estimate all(ExpectedYields yields, String name) {
        return row(yields, name).allPieces().orElseThrow();
    }

    /** Worked scene of the design, 2; the topside also is Goodman (1960), the exact variance of a product. */
    @Test
    void the_spread_of_a_topside_comes_from_the_leg_and_from_the_topside() {
        assertEquals(7.2600, all(LEG, "leg").mean(), 1e-9);
        assertEquals(0.1980, sd(all(LEG, "leg")), 1e-9);
        assertEquals(1.5246, all(LEG, "topside").mean(), 1e-8);
        assertEquals(0.07746862, sd(all(LEG, "topside")), 1e-8);
        Interval range = all(LEG, "topside").range95().orElseThrow();
        assertEquals(1.3728, range.low(), 1e-4);
        assertEquals(1.6764, range.high(), 1e-4);
    }

    /** Worked scene of the design, 2. */
    @Test
    void one_of_two_alike_pieces_has_half_the_spread_of_the_pair() {
        Estimate one = row(LEG, "topside").onePiece().orElseThrow();
        assertEquals(0.7623, one.mean(), 1e-9);
        assertEquals(0.038734, sd(one), 1e-6);
    }

    /** Worked scene of the design, 2: 3.6 points are 3.919928 standard deviations. */
    @Test
    void a_range_is_the_middle_95_per_cent_and_no_standard_deviation() {
        ExpectedYields yields = yields(hogget(pair("leg", "31.2 to 34.8"), rest("mince")), "100");
        assertEquals(33.0, all(yields, "leg").mean(), 1e-9);
        assertEquals(0.91838, sd(all(yields, "leg")), 1e-5);
    }

    @Test
    void a_rest_strays_as_far_as_its_neighbours_together() {
        ExpectedYields yields = yields(hogget(cut("leg", "33 ± 0.3"), cut("loin", "20 ± 0.4"), rest("mince")), "100");
        assertEquals(0.5, sd(all(yields, "rest")), 1e-12);
    }

    @Test
    void a_rest_beside_a_part_with_no_spread_has_none_stated() {
        ExpectedYields yields = yields(hogget(cut("leg", "33 ± 0.3"), cut("loin", "20"), rest("mince")), "100");
        assertEquals(0.3, sd(all(yields, "leg")), 1e-12);
        assertEquals(Spread.NOT_STATED, all(yields, "rest").spread());
        assertEquals(Spread.NOT_STATED, all(yields, "loin").spread());
    }

    @Test
    void what_lies_below_a_cut_with_no_spread_has_none_stated() {
        ExpectedYields yields =
                yields(hogget(cut("leg", "33", cut("topside", "21 ± 0.9"), rest("mince")), rest("mince")), "22");
        assertEquals(Spread.NOT_STATED, all(yields, "topside").spread());
    }

    @Test
    void meat_that_all_goes_one_way_is_certain_whatever_the_parts_do() {
        ExpectedYields yields = yields(
                hogget(cut("leg", "33", cut("topside", "21"), rest("mince")), cut("loin", "20 ± 1"), rest("diced")),
                "22");
        assertEquals(22, yields.total(Outcome.SALEABLE).mean(), 1e-12);
        assertEquals(Spread.NONE, yields.total(Outcome.SALEABLE).spread());
    }

    @Test
    void bone_with_no_spread_leaves_the_saleable_weight_with_none() {
        ExpectedYields yields = yields(hogget(cut("leg", "33 ± 1"), bone("neck", "20", "bones"), rest("mince")), "22");
        assertEquals(Spread.NOT_STATED, yields.total(Outcome.SALEABLE).spread());
        assertEquals(Spread.NONE, yields.total(Outcome.WASTE).spread());
    }

    @Test
    void without_a_rest_one_stated_spread_is_known_and_two_are_not() {
        ExpectedYields yields = yields(
                hogget(bone("neck", "20 ± 1", "bones"), trim("fat", "10 ± 1", "waste"), cut("side", "70")), "100");
        assertEquals(1, sd(yields.total(Outcome.BY_PRODUCT)), 1e-12);
        assertEquals(1, sd(yields.total(Outcome.WASTE)), 1e-12);
        assertEquals(Spread.NOT_STATED, yields.total(Outcome.SALEABLE).spread());
    }

    @Test
    void a_trimmed_cut_is_told_before_and_after_trim() {
        ExpectedYields yields = yields(
                hogget(pair("leg", "30 ± 0.9", trim("fat", "4 ± 1", "mince"), loss("saw", "1 ± 0")), rest("mince")),
                "20");
        assertEquals(6, all(yields, "leg").mean(), 1e-12);
        assertEquals(5.7, all(yields, "leg, trimmed").mean(), 1e-12);
        assertEquals(95, row(yields, "leg, trimmed").percentOfCutAbove().orElseThrow(), 1e-9);
        assertEquals(5.7, yields.products().mean(), 1e-12);
        double exact = Math.sqrt(36 * 1e-4 + 0.18 * 0.18 * (0.95 * 0.95 + 1e-4));
        assertEquals(exact, sd(all(yields, "leg, trimmed")), 1e-12);
    }

    @Test
    void trim_with_no_share_stays_in_what_is_left_and_shows_no_weight() {
        ExpectedYields yields = yields(hogget(cut("leg", "30 ± 0.9", trim("fat", "", "waste")), rest("mince")), "20");
        assertTrue(row(yields, "fat").allPieces().isEmpty());
        assertTrue(row(yields, "fat").percentOfCutAbove().isEmpty());
        assertEquals(6, all(yields, "leg, trimmed").mean(), 1e-12);
        assertEquals(Spread.NOT_STATED, all(yields, "leg, trimmed").spread());
        assertEquals(0.18, sd(all(yields, "leg")), 1e-12);
    }

    @Test
    void trim_with_no_share_beside_cuts_that_are_all_of_it_takes_nothing_from_them() {
        ExpectedYields yields =
                yields(hogget(cut("leg", "60 ± 1"), cut("loin", "40 ± 1"), trim("glands", "", "waste")), "20");
        assertEquals(0.2, sd(all(yields, "leg")), 1e-12);
        assertEquals(Spread.NONE, yields.total(Outcome.SALEABLE).spread());
    }

    /** 33.33 % three times is 99.99 %: within the 0.05 point that is allowed for rounding. */
    @Test
    void shares_that_miss_the_whole_by_a_rounding_are_scaled_to_close() {
        ExpectedYields yields = yields(hogget(cut("a", "33.33"), cut("b", "33.33"), cut("c", "33.33")), "30");
        assertEquals(10, all(yields, "a").mean(), 1e-12);
        assertEquals(30, yields.total(Outcome.SALEABLE).mean(), 30e-12);
    }

    @Test
    void a_small_uncertain_weight_is_never_ranged_below_nothing() {
        Interval range = Estimate.of(0.1, 0.01).weightRange95().orElseThrow();
        assertTrue(range.low() > 0);
        double logVariance = Math.log(2);
        assertEquals(0.1 / Math.sqrt(2) * Math.exp(-1.959963984540054 * Math.sqrt(logVariance)), range.low(), 1e-12);
        assertEquals(0.1 / Math.sqrt(2) * Math.exp(1.959963984540054 * Math.sqrt(logVariance)), range.high(), 1e-12);
        assertEquals(0, Estimate.of(0, 0.01).weightRange95().orElseThrow().low());
    }
}
