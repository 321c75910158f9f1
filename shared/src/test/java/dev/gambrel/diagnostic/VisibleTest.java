package dev.gambrel.diagnostic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VisibleTest {
    @Test
    void plain_words_are_left_as_they_are() {
        String words = "entrec\u00F4te, 33.0 % ± 0.9 % \uD83E\uDD69 \u7F8A";
        assertSame(words, Visible.text(words));
    }

    /** Unicode general categories Cc, Cf, Co, Cs, Zl and Zp, and no character; 202E and 2066 turn the direction. */
    @ParameterizedTest
    @CsvSource({
        "0000", "0007", "001B", "007F", "0085", "200B", "202E", "2066", "2028", "2029", "FEFF", "E000", "D83E", "FFFF"
    })
    void a_character_that_steers_or_hides_is_shown_by_its_number(String hex) {
        String hidden = Character.toString(Integer.parseInt(hex, 16));
        String number = Integer.toHexString(Integer.parseInt(hex, 16)).toUpperCase(java.util.Locale.ROOT);
        assertEquals("leg\\u{" + number + "}loin", Visible.text("leg" + hidden + "loin"));
    }

    @Test
    void a_hidden_character_beyond_the_first_plane_is_shown_too() {
        assertEquals("\\u{E0041}", Visible.text(Character.toString(0xE0041)));
    }
}
