package dev.gambrel.yields.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class BracketedRootTest {
    @Test
    void it_finds_where_a_function_rises_through_nothing() {
        assertEquals(Math.sqrt(2), BracketedRoot.of(x -> x * x - 2, 0, 2), 1e-15);
        assertEquals(Math.log(3), BracketedRoot.of(x -> Math.exp(x) - 3, 0, 5), 1e-14);
        assertEquals(Math.PI / 4, BracketedRoot.of(x -> Math.atan(1000 * (x - Math.PI / 4)), 0, 1), 1e-14);
    }

    @Test
    void it_finds_a_root_where_the_function_is_all_but_flat() {
        assertEquals(0.5, BracketedRoot.of(x -> Math.pow(x - 0.5, 3), 0, 1), 1e-5);
    }

    @Test
    void without_a_change_of_sign_it_takes_the_nearer_end() {
        assertEquals(0, BracketedRoot.of(x -> x + 1, 0, 1));
        assertEquals(1, BracketedRoot.of(x -> x - 2, 0, 1));
        assertEquals(1, BracketedRoot.of(x -> x - 1, 0, 1));
    }
}
