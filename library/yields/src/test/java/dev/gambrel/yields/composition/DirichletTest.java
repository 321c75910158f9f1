package dev.gambrel.yields.composition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.gambrel.yields.Sheet;
import dev.gambrel.yields.figure.JointEstimate;
import org.junit.jupiter.api.Test;

class DirichletTest {
    /** S. Kotz, N. Balakrishnan and N. L. Johnson, Continuous Multivariate Distributions, volume 1, chapter 49; computed. */
    @Test
    void its_means_spreads_and_correlations_follow_from_one_number_a_part() {
        JointEstimate moments = Dirichlet.of(35, 24, 15, 11, 15).moments();
        double[] mean = {0.35, 0.24, 0.15, 0.11, 0.15};
        double[] sd = {0.04746025, 0.04249636, 0.03552993, 0.03113369, 0.03552993};
        for (int i = 0; i < mean.length; i++) {
            assertEquals(mean[i], moments.mean(i), 1e-15);
            assertEquals(sd[i], Sheet.sd(moments.figure(i)), 1e-8);
        }
        assertEquals(-0.41235966, moments.correlation(0, 1).orElseThrow(), 1e-8);
        assertEquals(0, Sheet.sd(moments.combination(1, 1, 1, 1, 1)), 1e-9);
    }

    @Test
    void a_part_of_no_weight_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> Dirichlet.of(1, 0));
        assertThrows(IllegalArgumentException.class, () -> Dirichlet.of(1));
    }
}
