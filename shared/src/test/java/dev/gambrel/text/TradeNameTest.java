package dev.gambrel.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TradeNameTest {
    @ParameterizedTest
    @ValueSource(strings = {"Best End of Neck", "BEST END OF NECK", "best  end of neck", " best\u00A0end of neck "})
    void case_and_the_width_of_spaces_make_no_difference(String written) {
        assertEquals(TradeName.of("best end of neck"), TradeName.of(written));
        assertEquals(
                TradeName.of("best end of neck").hashCode(),
                TradeName.of(written).hashCode());
    }

    @Test
    void a_name_is_printed_as_it_was_written_with_single_spaces() {
        assertEquals(
                "Best End of Neck", TradeName.of("  Best  End of\u2003Neck ").text());
        assertEquals("Best End of Neck", TradeName.of("Best End of Neck").toString());
    }

    /** Unicode Standard Annex 15: composed and decomposed letters, and compatibility forms, are one under NFKC. */
    @ParameterizedTest
    @CsvSource({
        "entrec\u00F4te, entreco\u0302te",
        "\uFB01llet, fillet",
        "\uFF4C\uFF45\uFF47, leg",
        "ri\u00DFle, RISSLE",
        "\u212Aidney, kidney"
    })
    void unicode_forms_of_one_name_are_equal(String one, String other) {
        assertEquals(TradeName.of(one), TradeName.of(other));
        assertEquals(TradeName.of(one).key(), TradeName.of(other).key());
    }

    @Test
    void names_of_different_words_differ() {
        assertNotEquals(TradeName.of("leg"), TradeName.of("legs"));
        assertNotEquals(TradeName.of("thick flank"), TradeName.of("thickflank"));
        assertFalse(TradeName.of("leg").equals((Object) "leg"));
    }

    @Test
    void names_are_ordered_whatever_their_case() {
        var sorted = new TreeSet<>(List.of(TradeName.of("Neck"), TradeName.of("leg"), TradeName.of("LOIN")));
        assertEquals(List.of(TradeName.of("leg"), TradeName.of("loin"), TradeName.of("neck")), List.copyOf(sorted));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "\u00A0",
                "\u2003\u3000",
                "leg/loin",
                "/",
                "leg\u0000",
                "leg\u0007",
                "leg\n",
                "leg\tloin",
                "\u202Egel",
                "leg\u200E",
                "leg\u200Bloin",
                "\uFEFFleg",
                "leg\uD83E",
                "leg\uE000"
            })
    void what_cannot_be_printed_or_would_break_a_path_is_no_name(String text) {
        assertFalse(TradeName.isAcceptable(text));
        assertThrows(IllegalArgumentException.class, () -> TradeName.of(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"l", "1", "H-bone", "chef's cut", "\u7F8A\u8098", "\uD83E\uDD69", "6\u20138 rib", "a.b&c"})
    void words_of_any_script_are_names(String text) {
        assertTrue(TradeName.isAcceptable(text));
        assertEquals(text, TradeName.of(text).text());
    }

    @Test
    void a_name_has_at_most_128_characters() {
        assertEquals(128, TradeName.MAX_LENGTH);
        assertTrue(TradeName.isAcceptable("x".repeat(128)));
        assertFalse(TradeName.isAcceptable("x".repeat(129)));
    }

    /** A line separator is as long as a space, and a terminal may take it for the end of the line. */
    @Test
    void any_space_between_words_becomes_a_plain_one() {
        for (String space : List.of("\u2028", "\u2029", "\u00a0", "\u3000")) {
            assertEquals("best end", TradeName.of("best" + space + "end").text());
            assertEquals(TradeName.of("best end"), TradeName.of("best" + space + "end"));
        }
    }

    @Test
    void what_is_left_of_a_name_may_be_none() {
        TradeName whole = TradeName.of("a \u02d8");
        assertEquals(TradeName.of("bag"), TradeName.of("bag", whole));
        assertEquals(whole, TradeName.of("", whole));
        assertEquals(whole, TradeName.of("x".repeat(129), whole));
    }

    @Test
    void texts_that_can_be_no_names_are_the_same_when_their_characters_are() {
        assertTrue(TradeName.areSame("the rump end", "The  Rump End"));
        assertTrue(TradeName.areSame("rump/end", "rump/end"));
        assertFalse(TradeName.areSame("rump/end", "Rump/end"));
        assertFalse(TradeName.areSame("rump\0end", "rib end"));
    }
}
