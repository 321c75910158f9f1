package dev.gambrel.yields.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.yields.Sheet;
import org.junit.jupiter.api.Test;

class EstimateTest {
    private static Estimate of(double mean, double sd) {
        return new Estimate(mean, new Spread.Stated(sd));
    }

    /** The exact variance of a product by Goodman (1960), not the 0.077448 of relative errors added in squares. */
    @Test
    void a_topside_is_a_leg_times_a_share_of_it() {
        Estimate topside = of(22, 0).timesIndependent(of(0.33, 0.009)).timesIndependent(of(0.21, 0.009));
        assertEquals(1.5246, topside.mean(), 1e-12);
        assertEquals(0.07746862, Sheet.sd(topside), 1e-8);
    }

    @Test
    void a_spread_that_is_not_stated_stays_so() {
        Estimate unknown = new Estimate(0.21, Spread.NOT_STATED);
        assertEquals(
                Spread.NOT_STATED, of(7.26, 0.198).timesIndependent(unknown).spread());
        assertEquals(Spread.NOT_STATED, unknown.times(2).spread());
    }

    @Test
    void nothing_times_what_is_not_stated_is_nothing() {
        Estimate unknown = new Estimate(0.21, Spread.NOT_STATED);
        assertEquals(Estimate.exactly(0), Estimate.exactly(0).timesIndependent(unknown));
        assertEquals(Estimate.exactly(0), unknown.timesIndependent(Estimate.exactly(0)));
    }

    @Test
    void a_cost_is_a_weight_the_other_way_and_strays_as_far() {
        Estimate cost = of(7.26, 0.198).times(-2);
        assertEquals(-14.52, cost.mean(), 1e-12);
        assertEquals(0.396, Sheet.sd(cost), 1e-12);
        assertEquals(
                -14.52 - 1.959963984540054 * 0.396, cost.range95().orElseThrow().low(), 1e-12);
    }

    /** A loss written as 2 % to 6 % of 20 kg has a standard deviation of a quarter of its mean. */
    @Test
    void an_expectation_written_as_a_range_is_given_back_as_written() {
        Interval range = of(0.8, 0.8 / (2 * 1.959963984540054)).weightRange95().orElseThrow();
        assertEquals(0.4, range.low(), 1e-12);
        assertEquals(1.2, range.high(), 1e-12);
    }

    /** The lognormal of mean 1 and standard deviation 0.6: log variance ln 1.36 = 0.30748, by hand. */
    @Test
    void a_weight_whose_normal_range_would_begin_below_nothing_is_lognormal() {
        Interval range = of(1, 0.6).weightRange95().orElseThrow();
        assertEquals(0.28922, range.low(), 1e-5);
        assertEquals(2.54234, range.high(), 1e-5);
    }

    @Test
    void a_value_may_be_a_loss() {
        assertEquals(
                1 - 1.959963984540054 * 0.6, of(1, 0.6).range95().orElseThrow().low(), 1e-12);
    }
}
