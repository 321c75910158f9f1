package dev.gambrel.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class LimitsTest {
    /** The design, "Bad input": 1 MiB of text, nesting 100, 50 files 8 deep, 20,000 declarations, 50,000 nodes, 50 shown. */
    @Test
    void the_usual_limits_are_those_of_the_design() {
        assertEquals(new Limits(1_048_576, 100, 50, 8, 20_000, 50_000, 50), Limits.DEFAULT);
    }

    @Test
    void every_limit_lets_at_least_one_through() {
        assertEquals(1, new Limits(1, 1, 1, 1, 1, 1, 1).shown());
        assertThrows(IllegalArgumentException.class, () -> new Limits(0, 1, 1, 1, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Limits(1, 0, 1, 1, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Limits(1, 1, 0, 1, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Limits(1, 1, 1, 0, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Limits(1, 1, 1, 1, 0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Limits(1, 1, 1, 1, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Limits(1, 1, 1, 1, 1, 1, -1));
    }
}
