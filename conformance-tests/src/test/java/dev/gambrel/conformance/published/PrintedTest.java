package dev.gambrel.conformance.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PrintedTest {
    @Test
    void a_half_is_rounded_up_though_binary_arithmetic_falls_just_short_of_it() {
        assertEquals("25", Printed.like("25", 24.499999999999996));
        assertEquals("0.3", Printed.like("0.3", 0.25));
    }

    @Test
    void a_figure_has_as_many_places_as_the_printed_one() {
        assertEquals("33.90", Printed.like("33.85", 33.9));
        assertEquals("34", Printed.like("33", 33.9));
    }
}
