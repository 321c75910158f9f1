package dev.gambrel.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class YieldsBenchmarkTest {
    @Test
    void both_ways_give_the_same_figures_and_every_spread_is_known() {
        YieldsBenchmark benchmark = new YieldsBenchmark();
        benchmark.prepare();
        double sum = benchmark.yieldsOf500Cuts();
        assertTrue(Double.isFinite(sum));
        assertEquals(sum, benchmark.yieldsOf500CutsFromTheTree());
    }
}
