package dev.gambrel.yields.packs.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.packs.planning.StatedTolerance.Width;
import dev.gambrel.yields.packs.rule.PortionTolerances;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the Institutional Meat Purchase Specifications, November 2014: an 8 oz portion may stray by 0.5 oz either way. */
class StatedToleranceTest {
    private static Quantity ounces(String amount) {
        return Quantity.of(amount, Unit.OUNCE);
    }

    private static StatedTolerance eightOunces(Limit accepted) {
        return StatedTolerance.of(PortionTolerances.WEIGHT, ounces("8"), accepted)
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "7.5, 8.5, SAME",
        "7.75, 8.25, TIGHTER",
        "7.5, 8.25, TIGHTER",
        "7.75, 8.5, TIGHTER",
        "7.4, 8.5, WIDER",
        "7.75, 8.6, WIDER"
    })
    void a_house_s_tolerance_is_wider_or_tighter(String low, String high, Width width) {
        assertEquals(
                width, eightOunces(new Limit.Between(ounces(low), ounces(high))).width());
    }

    @Test
    void an_open_side_accepts_more_than_anything_published() {
        StatedTolerance atLeast = eightOunces(new Limit.AtLeast(ounces("7.5")));
        assertEquals(Width.SAME, atLeast.below());
        assertEquals(Width.WIDER, atLeast.above());
        assertEquals(Width.WIDER, atLeast.width());
        assertEquals(Width.NOT_STATED, eightOunces(new Limit.NotStated()).width());
    }

    /** 8 oz are 226.796 g: 212.6 g to 241.0 g are published, so 215 g to 238 g are tighter. */
    @Test
    void grams_are_held_against_ounces_exactly() {
        Limit grams = new Limit.Between(Quantity.of("215", Unit.GRAM), Quantity.of("238", Unit.GRAM));
        assertEquals(Width.TIGHTER, eightOunces(grams).width());
        Limit exact =
                new Limit.Between(Quantity.of("212.6214234375", Unit.GRAM), Quantity.of("240.9709465625", Unit.GRAM));
        assertEquals(Width.SAME, eightOunces(exact).width());
        StatedTolerance metric = StatedTolerance.of(
                        PortionTolerances.WEIGHT, Quantity.of("225", Unit.GRAM), new Limit.NotStated())
                .orElseThrow();
        // 225 g less 0.5 oz, which is 14.1747615625 g, in ounces
        assertEquals(
                0.2108252384375, metric.publishedLimit().least().orElseThrow().value(), 1e-15);
        assertEquals(
                0.2391747615625, metric.publishedLimit().most().orElseThrow().value(), 1e-15);
    }

    /** The central 95 % of a normal distribution lies within 1.959964 standard deviations. */
    @Test
    void the_share_of_portions_within_it() {
        double half = 0.5 * 0.028349523125;
        Estimate cut = new Estimate(8 * 0.028349523125, new Spread.Stated(half / 1.959963984540054));
        StatedTolerance house = eightOunces(new Limit.Between(ounces("7.75"), ounces("8.25")));
        assertEquals(0.95, house.shareWithinPublished(cut).orElseThrow(), 1e-9);
        assertTrue(house.shareAccepted(cut).orElseThrow() < 0.7);
        assertTrue(eightOunces(new Limit.NotStated()).shareAccepted(cut).isEmpty());
        Estimate unknown = new Estimate(8 * 0.028349523125, Spread.NOT_STATED);
        assertTrue(house.shareWithinPublished(unknown).isEmpty());
    }

    /** Sections 3.5.1 and 3.6: an inch may stray by three sixteenths. The printed 5 mm is a rounding, and wider. */
    @Test
    void thickness_has_a_table_of_its_own() {
        Limit millimetres =
                new Limit.Between(Quantity.of("20.4", Unit.MILLIMETRE), Quantity.of("30.4", Unit.MILLIMETRE));
        StatedTolerance inch = StatedTolerance.of(PortionTolerances.THICKNESS, Quantity.of("1", Unit.INCH), millimetres)
                .orElseThrow();
        assertEquals(Width.WIDER, inch.width());
        Estimate sliced = new Estimate(25.4, new Spread.Stated(4.7625 / 1.959963984540054));
        assertEquals(0.95, inch.shareWithinPublished(sliced).orElseThrow(), 1e-9);
        assertTrue(StatedTolerance.of(PortionTolerances.WEIGHT, Quantity.of("1", Unit.INCH), millimetres)
                .isEmpty());
        assertThrows(IllegalArgumentException.class, () -> eightOunces(millimetres));
    }

    /** 180 g are 6.35 oz, so half an ounce, 14.2 g, either way is published: 170 g to 190 g are tighter. */
    @Test
    void a_portion_of_a_specification_is_held_against_both_tables() {
        Expected weight = new Expected.PlusMinus(Quantity.of("180", Unit.GRAM), Quantity.of("6", Unit.GRAM));
        Limit grams = new Limit.Between(Quantity.of("170", Unit.GRAM), Quantity.of("190", Unit.GRAM));
        Portion steak = Portion.byWeight(TradeName.of("steak"), weight, grams, new Home.NotStated());
        StatedTolerance one = StatedTolerance.of(steak).get(0);
        assertEquals(1, StatedTolerance.of(steak).size());
        assertEquals(Width.TIGHTER, one.width());
        assertEquals(0.0141747615625, one.published().upperLimit().value() - 0.18, 1e-15);
        assertTrue(one.shareWithinPublished(Estimate.of(weight)).orElseThrow()
                > one.shareAccepted(Estimate.of(weight)).orElseThrow());
    }
}
