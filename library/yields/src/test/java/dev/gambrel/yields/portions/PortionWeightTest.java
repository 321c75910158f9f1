package dev.gambrel.yields.portions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.portion.Limit;
import org.junit.jupiter.api.Test;

class PortionWeightTest {
    /** 2.5 % may fall below 190 g, cut with 6 g: the normal loss function (Silver, Pyke, Peterson), computed by another program. */
    @Test
    void what_is_aimed_at_so_that_few_are_short_is_given_away() {
        double aim = PortionWeight.aimFor(190, 6, 0.025);
        assertEquals(201.75978391, aim, 1e-7);
        assertEquals(1.75978391, aim - 200, 1e-7);
        assertEquals(0.025, new PortionWeight(aim, 6).shareUnder(190), 1e-12);
        assertEquals(3.37576891, new PortionWeight(aim, 6).giveAwayOver(200), 1e-7);
    }

    /** φ(0) = 0.3989423 of one standard deviation. */
    @Test
    void aimed_at_what_is_paid_for_two_fifths_of_the_spread_are_given_away() {
        assertEquals(6 * 0.3989422804014327, new PortionWeight(180, 6).giveAwayOver(180), 1e-12);
        assertEquals(20, new PortionWeight(200, 0).giveAwayOver(180));
        assertEquals(0, new PortionWeight(160, 0).giveAwayOver(180));
    }

    /** The central 95 % of a normal distribution lies within 1.959964 standard deviations. */
    @Test
    void a_limit_takes_its_share() {
        PortionWeight steak = new PortionWeight(0.18, 0.006);
        double half = 1.959963984540054 * 6;
        Limit both = new Limit.Between(grams(180 - half), grams(180 + half));
        assertEquals(0.95, steak.shareWithin(both).orElseThrow(), 1e-12);
        assertEquals(
                0.975, steak.shareWithin(new Limit.AtLeast(grams(180 - half))).orElseThrow(), 1e-12);
        assertEquals(0.5, steak.shareWithin(new Limit.AtMost(grams(180))).orElseThrow(), 1e-12);
        assertTrue(steak.shareWithin(new Limit.NotStated()).isEmpty());
        assertEquals(
                1,
                new PortionWeight(0.18, 0)
                        .shareWithin(new Limit.AtMost(grams(180)))
                        .orElseThrow());
    }

    private static Quantity grams(double amount) {
        return Quantity.of(Double.toString(amount), Unit.GRAM);
    }
}
