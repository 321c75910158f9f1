package dev.gambrel.references.unece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.references.item.Animal;
import dev.gambrel.text.SourceText;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class MeatCodeLaws {
    private static Result<MeatCode> decode(String code) {
        return MeatCodes.decode(new SourceText("code", code));
    }

    @Provide
    Arbitrary<MeatCode> codes() {
        Arbitrary<String> cuts = Arbitraries.strings().numeric().ofLength(4);
        return Combinators.combine(
                        Arbitraries.of(Animal.values()),
                        cuts,
                        Arbitraries.integers().between(0, Integer.MAX_VALUE))
                .as((animal, cut, seed) -> new MeatCode(animal, cut, digits(seed)));
    }

    /** Digits that the list of cattle has, so that every species has them. */
    private static Map<Field, Integer> digits(int seed) {
        Map<Field, Integer> digits = new EnumMap<>(Field.class);
        int left = seed;
        for (Field field : Field.values()) {
            List<FieldValue> choices = field.choices();
            digits.put(field, choices.get(left % choices.size()).digit());
            left = left / 3 + field.position();
        }
        return digits;
    }

    @Property
    void what_is_written_is_read_back(@ForAll("codes") MeatCode code) {
        assertEquals(code, decode(code.encode()).orElseThrow());
    }

    @Property
    void what_is_read_is_written_back(@ForAll("codes") MeatCode code, @ForAll("codes") MeatCode other) {
        String mixed = code.encode().substring(0, 2) + other.encode().substring(2);
        decode(mixed).value().ifPresent(read -> assertEquals(mixed, read.encode()));
    }

    @Property
    void another_digit_means_something_else_or_is_refused_at_its_place(
            @ForAll("codes") MeatCode code, @ForAll @IntRange(max = 19) int at, @ForAll @IntRange(max = 9) int digit) {
        StringBuilder changed = new StringBuilder(code.encode());
        changed.setCharAt(at, (char) ('0' + digit));
        Result<MeatCode> read = decode(changed.toString());
        if (read.value().isPresent()) {
            assertEquals(changed.toString(), read.orElseThrow().encode());
            if (!changed.toString().equals(code.encode())) {
                assertNotEquals(code, read.orElseThrow());
            }
        } else {
            assertFalse(read.diagnostics().isEmpty());
            read.diagnostics().forEach(finding -> {
                Place.InText place = (Place.InText) finding.place();
                boolean isSpecies = at < 2;
                assertEquals(
                        true,
                        isSpecies
                                || place.span().start() <= at
                                        && at < place.span().end());
            });
        }
    }

    @Property
    void no_text_of_twenty_characters_is_more_than_read_or_refused(
            @ForAll @net.jqwik.api.constraints.StringLength(20) String text) {
        assertEquals(
                decode(text).value().isPresent(),
                decode(text).diagnostics().stream()
                        .noneMatch(finding -> finding.severity() == dev.gambrel.diagnostic.Severity.ERROR));
    }
}
