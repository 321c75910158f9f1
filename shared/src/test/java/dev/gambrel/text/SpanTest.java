package dev.gambrel.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class SpanTest {
    @Test
    void a_span_covers_what_lies_between_its_ends() {
        assertEquals(4, new Span(3, 7).length());
        assertEquals(0, new Span(3, 3).length());
    }

    @Test
    void two_spans_are_covered_from_the_earlier_start_to_the_later_end() {
        assertEquals(new Span(2, 9), new Span(2, 4).cover(new Span(7, 9)));
        assertEquals(new Span(2, 9), new Span(7, 9).cover(new Span(2, 4)));
        assertEquals(new Span(2, 9), new Span(2, 9).cover(new Span(3, 4)));
    }

    @Test
    void a_span_neither_begins_before_its_text_nor_ends_before_it_begins() {
        assertThrows(IllegalArgumentException.class, () -> new Span(-1, 2));
        assertThrows(IllegalArgumentException.class, () -> new Span(5, 4));
    }
}
