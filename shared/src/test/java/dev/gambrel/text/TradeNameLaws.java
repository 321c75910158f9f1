package dev.gambrel.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.Normalizer;
import java.util.Locale;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;

class TradeNameLaws {
    @Property
    void a_printed_name_is_read_back_as_itself(@ForAll @StringLength(min = 1, max = 40) String text) {
        Assume.that(TradeName.isAcceptable(text));
        TradeName name = TradeName.of(text);
        assertTrue(TradeName.isAcceptable(name.text()));
        assertEquals(name, TradeName.of(name.text()));
        assertEquals(name.text(), TradeName.of(name.text()).text());
    }

    @Property
    void the_unicode_form_makes_no_difference(@ForAll @StringLength(min = 1, max = 40) String text) {
        String composed = Normalizer.normalize(text, Normalizer.Form.NFKC);
        Assume.that(TradeName.isAcceptable(text) && TradeName.isAcceptable(composed));
        assertEquals(TradeName.of(composed), TradeName.of(text));
        assertEquals(
                TradeName.of(Normalizer.normalize(text, Normalizer.Form.NFD)).key(),
                TradeName.of(text).key());
    }

    /** The acute accent alone is, under NFKC, a space and a combining mark. */
    @Example
    void a_space_that_hides_in_a_character_is_as_wide_as_any() {
        assertEquals(TradeName.of("leg \u0301"), TradeName.of("leg \u00B4"));
        assertEquals(TradeName.of("\u0301"), TradeName.of("\u00B4"));
    }

    /**
     * Case is changed in the decomposed form, as Unicode's canonical caseless match (D145) asks: the iota below (U+0345) becomes
     * a letter in capitals, and a mark that stood in the wrong order would be set on another letter.
     */
    @Property
    void equal_names_have_equal_hashes_and_compare_as_equal(@ForAll @StringLength(min = 1, max = 40) String text) {
        String capitals = Normalizer.normalize(text, Normalizer.Form.NFD).toUpperCase(Locale.ROOT);
        Assume.that(TradeName.isAcceptable(text) && TradeName.isAcceptable(capitals));
        TradeName one = TradeName.of(text);
        TradeName other = TradeName.of(capitals);
        assertEquals(one, other);
        assertEquals(one.hashCode(), other.hashCode());
        assertEquals(0, one.compareTo(other));
    }

    @Example
    void a_mark_stays_on_its_letter_when_the_iota_below_becomes_a_letter() {
        assertEquals(TradeName.of("\u1F80\u0302"), TradeName.of("\u1F08\u0302\u0399"));
    }

    @Example
    void the_order_of_marks_makes_no_difference() {
        assertEquals(TradeName.of("\u0300\u0345"), TradeName.of("\u0345\u0300"));
        assertEquals(TradeName.of("\u1F80\u0302"), TradeName.of("\u1F08\u0302\u0399"));
    }

    /** An iota below that is composed with its letter lets a mark pass only when it is taken apart before case is changed. */
    @Example
    void a_composed_iota_below_makes_no_difference() {
        assertEquals(TradeName.of("\u1F80\u0302"), TradeName.of("\u0391\u0313\u0302\u0399"));
    }
}
