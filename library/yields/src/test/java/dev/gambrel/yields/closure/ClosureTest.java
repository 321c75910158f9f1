package dev.gambrel.yields.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

public class ClosureTest {
    /** Correlations were written down to four places; the third is -0.86875 exactly, half a step off what is written. */
    private static final double FOUR_PLACES = 0.5e-4 + 1e-12;

    /** Derived for Gambrel with two independent solvers. */
    @ParameterizedTest
    @CsvSource({
        "0.9 0.9 0.9, 0.27435, -0.5000",
        "1 0.8 0.6, 0, -0.8000",
        "1 0.8 0.5, -0.47314, -0.8688",
        "1.28 0.8 0.6, -12.592, -0.9367",
        "2 1 1 1, -0.24, -0.6667",
        "1 1 0.1, 0.25, -0.9950",
        "0.6 0.6 0.4 0.4 0.8 0.9 0.8 0.4 0.6, 0.23102, -0.1008"
    })
    void stated_spreads_that_close_to_the_whole_leave_one_covariance(String sds, double k, double correlation) {
        double[] sd =
                Arrays.stream(sds.split(" ")).mapToDouble(Double::parseDouble).toArray();
        Conditioned closure = new Conditioned(sd);
        assertEquals(k, closure.k(), Math.max(1e-5, Math.abs(k) * 5e-5));
        assertEquals(correlation, covariance(closure, sd.length, 0, 1) / (sd[0] * sd[1]), FOUR_PLACES);
        assertKeepsTheSpreads(closure, sd);
    }

    /** The limit of the derivation: the largest is the sum of the others, which then move together. */
    @Test
    void at_the_limit_the_others_move_together() {
        double[] sd = {0.9, 0.5, 0.4};
        Conditioned closure = new Conditioned(sd);
        assertKeepsTheSpreads(closure, sd);
        assertEquals(1, covariance(closure, 3, 1, 2) / (0.5 * 0.4), 1e-9);
    }

    @Test
    void two_parts_gain_what_the_other_loses() {
        double[] sd = {0.9, 0.9};
        assertEquals(-1, covariance(new Conditioned(sd), 2, 0, 1) / 0.81, 1e-12);
    }

    @Test
    void a_spread_larger_than_the_others_together_cannot_be() {
        assertThrows(IllegalArgumentException.class, () -> new Conditioned(new double[] {0.9, 0.5, 0.3}));
    }

    static void assertKeepsTheSpreads(Closure closure, double[] sd) {
        double largest = Arrays.stream(sd).max().orElseThrow();
        for (int i = 0; i < sd.length; i++) {
            double sum = 0;
            for (int j = 0; j < sd.length; j++) {
                sum += covariance(closure, sd.length, i, j);
            }
            assertEquals(0, sum, 1e-11 * largest * largest);
            assertEquals(sd[i] * sd[i], covariance(closure, sd.length, i, i), 1e-11 * largest * largest);
        }
    }

    public static double covariance(Closure closure, int parts, int i, int j) {
        return closure.covariance(unit(parts, i), unit(parts, j), 0);
    }

    private static double[] unit(int parts, int i) {
        double[] y = new double[parts];
        y[i] = 1;
        return y;
    }
}
