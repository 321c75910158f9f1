package dev.gambrel.yields.comparison;

import static dev.gambrel.yields.Sheet.cold;
import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.portioned;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.to;
import static dev.gambrel.yields.Sheet.tree;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.WeightBand;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What one carcass gives by two sheets; the figures follow by hand from the shares beside them. */
class YieldComparisonTest {
    private static final CutTree BEFORE = hogget(pair("leg", "30"), cut("neck", "10"), rest("mince"));
    private static final CutTree AFTER = hogget(pair("leg", "32"), cut("flank", "8"), rest("diced"));

    private static AmountChange line(List<AmountChange> lines, String name) {
        return lines.stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void two_points_more_leg_of_twenty_kilograms_are_four_hundred_grams() {
        YieldComparison both = YieldComparison.of(yields(BEFORE, "20"), yields(AFTER, "20"));
        AmountChange leg = line(both.products(), "leg");
        assertEquals(new Amount.Of(6), leg.before());
        assertEquals(0.4, leg.difference().orElseThrow(), 1e-12);
    }

    @Test
    void of_a_cut_that_is_gone_all_is_lost_and_of_a_new_one_all_is_won() {
        YieldComparison both = YieldComparison.of(yields(BEFORE, "20"), yields(AFTER, "20"));
        AmountChange neck = line(both.products(), "neck");
        assertEquals(new Amount.NotThere(), neck.after());
        assertEquals(-2, neck.difference().orElseThrow(), 1e-12);
        assertEquals(1.6, line(both.products(), "flank").difference().orElseThrow(), 1e-12);
    }

    @Test
    void what_leaves_one_stream_is_seen_in_the_other() {
        YieldComparison both = YieldComparison.of(yields(BEFORE, "20"), yields(AFTER, "20"));
        assertEquals(-12, line(both.streams(), "mince").difference().orElseThrow(), 1e-12);
        assertEquals(12, line(both.streams(), "diced").difference().orElseThrow(), 1e-12);
        assertEquals(0, line(both.outcomes(), "saleable").difference().orElseThrow(), 1e-12);
    }

    /** One piece of 2 kg gives 10 portions of 200 g, one of 2.4 kg gives 12; no spread is stated. */
    @Test
    void portions_are_counted_by_both() {
        CutTree few = hogget(portioned(cut("rump", "10"), "steak", "0.2", to("mince")), rest("diced"));
        CutTree many = hogget(portioned(cut("rump", "12"), "steak", "0.2", to("mince")), rest("diced"));
        YieldComparison both = YieldComparison.of(yields(few, "20"), yields(many, "20"));
        AmountChange steaks = line(both.portions(), "rump / steak");
        assertEquals(new Amount.Of(10), steaks.before());
        assertEquals(new Amount.Of(12), steaks.after());
    }

    @Test
    void carcasses_of_two_weights_are_not_compared() {
        var twenty = yields(BEFORE, "20");
        var heavier = yields(AFTER, "21");
        assertThrows(IllegalArgumentException.class, () -> YieldComparison.of(twenty, heavier));
    }

    @Test
    void the_carcass_is_the_middle_of_what_both_bands_have_in_common() {
        assertEquals(
                Quantity.of("23.0", Unit.KILOGRAM),
                YieldComparison.commonCarcass(BEFORE, banded("22", "30"))
                        .orElseThrow()
                        .mass());
    }

    @Test
    void bands_with_nothing_in_common_have_no_carcass() {
        assertTrue(YieldComparison.commonCarcass(BEFORE, banded("25", "30")).isEmpty());
    }

    private static CutTree banded(String low, String high) {
        return tree(
                cold(new WeightBand.Stated(Quantity.of(low, Unit.KILOGRAM), Quantity.of(high, Unit.KILOGRAM))),
                rest("mince"));
    }
}
