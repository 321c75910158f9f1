package dev.gambrel.yields;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class EstimateTest {
    private static Estimate of(double mean, double sd) {
        return new Estimate(mean, new Spread.Stated(sd));
    }

    /** Check A05, the exact variance of a product by Goodman (1960): not the 0.077448 of relative errors added in squares. */
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
    void a_cost_is_a_weight_the_other_way_and_strays_as_far() {
        Estimate cost = of(7.26, 0.198).times(-2);
        assertEquals(-14.52, cost.mean(), 1e-12);
        assertEquals(0.396, Sheet.sd(cost), 1e-12);
        assertEquals(
                -14.52 - 1.959963984540054 * 0.396, cost.range95().orElseThrow().low(), 1e-12);
    }

    /** The lognormal of mean 1 and standard deviation 0.2: exp(-0.0196) / exp(1.96 × 0.198) = 0.665. */
    @Test
    void the_range_is_normal_up_to_a_fifth_of_the_mean() {
        assertEquals(
                1 - 1.959963984540054 * 0.2, of(1, 0.2).range95().orElseThrow().low(), 1e-12);
        assertEquals(0.665, of(1, 0.2001).range95().orElseThrow().low(), 1e-3);
    }
}
