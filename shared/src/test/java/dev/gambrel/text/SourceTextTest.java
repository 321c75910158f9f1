package dev.gambrel.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SourceTextTest {
    private static SourceText text(String text) {
        return new SourceText("hogget.cuts", text);
    }

    @Test
    void an_empty_text_has_one_empty_line() {
        SourceText empty = text("");
        assertEquals(1, empty.lineCount());
        assertEquals(new Span(0, 0), empty.line(1));
        assertEquals(new Position(1, 1), empty.position(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"leg\nloin\nneck", "leg\rloin\rneck", "leg\r\nloin\r\nneck"})
    void lines_end_with_line_feed_or_carriage_return_or_both(String written) {
        SourceText text = text(written);
        assertEquals(3, text.lineCount());
        assertEquals("leg", text.slice(text.line(1)));
        assertEquals("loin", text.slice(text.line(2)));
        assertEquals("neck", text.slice(text.line(3)));
    }

    @Test
    void line_ends_of_every_kind_may_stand_in_one_text() {
        SourceText text = text("leg\r\nloin\rneck\nflank\n\rbreast");
        assertEquals(6, text.lineCount());
        assertEquals("flank", text.slice(text.line(4)));
        assertEquals("", text.slice(text.line(5)));
        assertEquals("breast", text.slice(text.line(6)));
    }

    @Test
    void after_the_last_line_end_comes_an_empty_line() {
        SourceText text = text("leg\n");
        assertEquals(2, text.lineCount());
        assertEquals(new Span(4, 4), text.line(2));
        assertEquals(new Position(2, 1), text.position(4));
    }

    @Test
    void a_place_is_told_by_line_and_column_from_one() {
        SourceText text = text("leg\r\nloin");
        assertEquals(new Position(1, 1), text.position(0));
        assertEquals(new Position(1, 4), text.position(3));
        assertEquals(new Position(1, 5), text.position(4));
        assertEquals(new Position(2, 1), text.position(5));
        assertEquals(new Position(2, 4), text.position(8));
        assertEquals(new Position(2, 5), text.position(9));
    }

    @Test
    void columns_count_utf_16_characters() {
        assertEquals(new Position(1, 3), text("\uD83E\uDD69leg").position(2));
    }

    @Test
    void there_is_no_place_outside_the_text() {
        SourceText text = text("leg");
        assertThrows(IndexOutOfBoundsException.class, () -> text.position(-1));
        assertThrows(IndexOutOfBoundsException.class, () -> text.position(4));
        assertThrows(IndexOutOfBoundsException.class, () -> text.line(0));
        assertThrows(IndexOutOfBoundsException.class, () -> text.line(2));
        assertThrows(IndexOutOfBoundsException.class, () -> text.slice(new Span(2, 4)));
    }

    @Test
    void more_lines_than_were_foreseen_are_all_found() {
        SourceText text = text("cut leg\n".repeat(1000));
        assertEquals(1001, text.lineCount());
        assertEquals(new Position(1000, 1), text.position(7992));
    }

    @Test
    void texts_are_equal_when_name_and_text_are() {
        assertEquals(text("leg"), text("leg"));
        assertEquals(text("leg").hashCode(), text("leg").hashCode());
        assertNotEquals(text("leg"), text("loin"));
        assertNotEquals(text("leg"), new SourceText("deer.cuts", "leg"));
        assertEquals("hogget.cuts", text("leg").toString());
    }
}
