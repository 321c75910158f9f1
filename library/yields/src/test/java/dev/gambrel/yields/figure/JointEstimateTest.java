package dev.gambrel.yields.figure;

import static dev.gambrel.yields.Sheet.sd;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class JointEstimateTest {
    private static final double V = 4.999;
    private static final double I = 0.019661;
    private static final double PHI = 1.04446;

    private static final int RESISTANCE = 0;
    private static final int REACTANCE = 1;
    private static final int IMPEDANCE = 2;

    /** JCGM 100:2008, H.2: voltage, current and phase read five times together, with the uncertainties of its table H.3. */
    private static final JointEstimate READINGS =
            correlated(new double[] {V, I, PHI}, new double[] {0.0032, 0.0000095, 0.00075}, new double[][] {
                {1, -0.36, 0.86}, {-0.36, 1, -0.65}, {0.86, -0.65, 1}
            });

    /** R = V cos φ / I, X = V sin φ / I and Z = V / I, with their derivatives by V, I and φ. */
    private static JointEstimate resistanceReactanceAndImpedance() {
        double r = V * Math.cos(PHI) / I;
        double x = V * Math.sin(PHI) / I;
        double z = V / I;
        return READINGS.propagated(new double[] {r, x, z}, new double[][] {
            {r / V, -r / I, -x}, {x / V, -x / I, r}, {z / V, -z / I, 0}
        });
    }

    private static JointEstimate correlated(double[] means, double[] sds, double[][] correlations) {
        double[][] covariances =
                Arrays.stream(correlations).map(double[]::clone).toArray(double[][]::new);
        for (int i = 0; i < means.length; i++) {
            for (int j = 0; j < means.length; j++) {
                covariances[i][j] *= sds[i] * sds[j];
            }
        }
        return JointEstimate.of(means, covariances);
    }

    /**
     * JCGM 100:2008, table H.4, from memory: 127.732 Ω with 0.071, 219.847 Ω with 0.295 and 254.260 Ω with 0.236. The guide
     * rounds on the way: unrounded, its table H.3 gives 0.06998 for the resistance.
     */
    @Test
    void resistance_reactance_and_impedance_follow_from_readings_that_vary_together() {
        JointEstimate found = resistanceReactanceAndImpedance();
        assertEquals(127.732, found.mean(RESISTANCE), 0.001);
        assertEquals(0.071, sd(found.figure(RESISTANCE)), 0.0012);
        assertEquals(0.069979, sd(found.figure(RESISTANCE)), 1e-6);
        assertEquals(219.847, found.mean(REACTANCE), 0.001);
        assertEquals(0.295, sd(found.figure(REACTANCE)), 0.001);
        assertEquals(0.295717, sd(found.figure(REACTANCE)), 1e-6);
        assertEquals(254.260, found.mean(IMPEDANCE), 0.001);
        assertEquals(0.236, sd(found.figure(IMPEDANCE)), 0.001);
    }

    /** JCGM 100:2008, table H.4, from memory, to within the guide's own rounding; unrounded -0.59148, -0.49062, 0.99280. */
    @Test
    void what_follows_from_the_same_readings_varies_together() {
        JointEstimate found = resistanceReactanceAndImpedance();
        double rx = found.correlation(RESISTANCE, REACTANCE).orElseThrow();
        double rz = found.correlation(RESISTANCE, IMPEDANCE).orElseThrow();
        double xz = found.correlation(REACTANCE, IMPEDANCE).orElseThrow();
        assertEquals(-0.588, rx, 0.006);
        assertEquals(-0.485, rz, 0.006);
        assertEquals(0.993, xz, 0.006);
        assertEquals(-0.59148, rx, 1e-5);
        assertEquals(-0.49062, rz, 1e-5);
        assertEquals(0.99280, xz, 1e-5);
    }

    @Test
    void one_function_is_propagated_as_among_several() {
        double r = V * Math.cos(PHI) / I;
        double x = V * Math.sin(PHI) / I;
        assertEquals(resistanceReactanceAndImpedance().figure(RESISTANCE), READINGS.propagated(r, r / V, -r / I, -x));
    }

    /** By hand: variances 4 and 9, covariance -3; 2X − Y has 4·4 + 9 + 2·2·3 = 37. */
    @Test
    void a_sum_of_figures_has_a_spread_that_knows_how_they_vary_together() {
        JointEstimate both = JointEstimate.of(new double[] {10, 20}, new double[][] {{4, -3}, {-3, 9}});
        assertEquals(0, both.combination(2, -1).mean());
        assertEquals(Math.sqrt(37), sd(both.combination(2, -1)), 1e-12);
        assertEquals(-0.5, both.correlation(0, 1).orElseThrow(), 1e-12);
    }

    /** By hand: W = 3 ± 1, Cov[WX, WY] = (9 + 1)(-3) + 1·10·20 = 170. */
    @Test
    void figures_times_the_same_weight_vary_together_with_it() {
        JointEstimate both = JointEstimate.of(new double[] {10, 20}, new double[][] {{4, -3}, {-3, 9}});
        JointEstimate weighed = both.timesIndependent(new Estimate(3, new Spread.Stated(1)));
        assertEquals(30, weighed.mean(0));
        assertEquals(170, weighed.covariance(0, 1).orElseThrow(), 1e-12);
        Estimate alone = both.figure(1).timesIndependent(new Estimate(3, new Spread.Stated(1)));
        assertEquals(sd(alone), sd(weighed.figure(1)), 1e-12);
    }

    @Test
    void what_is_not_stated_is_open_for_each_entry_alone_and_never_nothing() {
        double open = Double.NaN;
        JointEstimate some = JointEstimate.of(
                new double[] {1, 2, 3}, new double[][] {{4, open, 0}, {open, open, open}, {0, open, 9}});
        assertTrue(some.covariance(0, 1).isEmpty());
        assertTrue(some.correlation(0, 1).isEmpty());
        assertEquals(Spread.NOT_STATED, some.figure(1).spread());
        assertEquals(Spread.NOT_STATED, some.combination(1, 1, 1).spread());
        assertEquals(Math.sqrt(13), sd(some.combination(1, 0, 1)), 1e-12);
        assertEquals(Math.sqrt(52), sd(some.times(2).combination(1, 0, 1)), 1e-12);
        assertEquals(Spread.NOT_STATED, some.times(2).figure(1).spread());
    }

    @Test
    void what_does_not_vary_has_no_correlation() {
        JointEstimate fixed = JointEstimate.of(new double[] {1, 2}, new double[][] {{0, 0}, {0, 9}});
        assertTrue(fixed.correlation(0, 1).isEmpty());
        assertEquals(1, fixed.correlation(1, 1).orElseThrow());
    }

    @Test
    void a_table_that_is_no_covariance_is_refused() {
        double[] two = {1, 2};
        assertThrows(IllegalArgumentException.class, () -> JointEstimate.of(two, new double[][] {{1}}));
        assertThrows(IllegalArgumentException.class, () -> JointEstimate.of(two, new double[][] {{1, 2}, {3, 1}}));
        assertThrows(IllegalArgumentException.class, () -> JointEstimate.of(two, new double[][] {{1, 0}, {0, -1}}));
        double open = Double.NaN;
        assertThrows(IllegalArgumentException.class, () -> JointEstimate.of(two, new double[][] {{1, open}, {0, 1}}));
        assertEquals(
                2, JointEstimate.of(two, new double[][] {{1, -0.0}, {0, 1}}).size());
    }

    @Test
    void nobody_can_change_it_from_outside() {
        double[] means = {1};
        double[][] covariances = {{4}};
        JointEstimate one = JointEstimate.of(means, covariances);
        means[0] = 7;
        covariances[0][0] = 7;
        assertEquals(new Estimate(1, new Spread.Stated(2)), one.figure(0));
    }
}
