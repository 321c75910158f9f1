package dev.gambrel.references.gs1;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class ElementStringLaws {
    private static Result<ElementString> read(String text) {
        return ElementStrings.read(new SourceText("label", text));
    }

    private static Element element(String digits, String value) {
        return new Element(Identifier.of(digits).orElseThrow(), digits, value);
    }

    @Provide
    Arbitrary<ElementString> labels() {
        Arbitrary<String> item = Arbitraries.strings().numeric().ofLength(13);
        Arbitrary<String> lot = Arbitraries.strings()
                .withChars("AZaz09-/.%&+_!?")
                .ofMinLength(1)
                .ofMaxLength(20);
        Arbitrary<Integer> grams = Arbitraries.integers().between(0, 999_999);
        Arbitrary<Integer> decimals = Arbitraries.integers().between(0, 5);
        return Combinators.combine(item, lot, grams, decimals)
                .as((number, text, weight, places) -> new ElementString(List.of(
                        element("01", number + CheckDigit.of(number)),
                        element("10", text),
                        element("310" + places, "0".repeat(6 - weight.toString().length()) + weight))));
    }

    @Property
    void both_forms_are_read_back(@ForAll("labels") ElementString label) {
        assertEquals(label, read(label.bracketed()).orElseThrow());
        assertEquals(label, read(label.raw()).orElseThrow());
    }

    @Property
    void one_wrong_digit_of_an_item_is_always_found(
            @ForAll("labels") ElementString label,
            @ForAll @IntRange(max = 13) int at,
            @ForAll @IntRange(min = 1, max = 9) int by) {
        char[] digits = label.gtin().orElseThrow().digits().toCharArray();
        digits[at] = (char) ('0' + (digits[at] - '0' + by) % 10);
        assertFalse(CheckDigit.isRight(new String(digits)));
    }

    @Property
    void no_text_is_more_than_read_or_refused(@ForAll String text) {
        Result<ElementString> result = read(text);
        assertEquals(result.value().isEmpty(), Result.hasError(result.diagnostics()));
        read("(10)" + text);
        read("0191234567890121" + text);
    }

    @Property
    void a_date_lies_within_fifty_years_of_its_reading(
            @ForAll @IntRange(max = 99) int year, @ForAll @IntRange(min = 1000, max = 9000) int reading) {
        int full = new Gs1Date(year, 1, 1).fullYear(reading);
        assertEquals(year, Math.floorMod(full, 100));
        assertNotEquals(true, full - reading > 50 || reading - full > 49);
    }
}
