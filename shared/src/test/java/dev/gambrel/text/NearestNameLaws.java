package dev.gambrel.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LowerChars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;

class NearestNameLaws {
    @Property
    void a_known_name_is_nearest_to_itself(
            @ForAll @Size(min = 1, max = 8) List<@LowerChars @StringLength(min = 1, max = 12) String> words) {
        List<TradeName> known = words.stream().map(TradeName::of).toList();
        for (TradeName name : known) {
            assertEquals(Optional.of(name), NearestName.of(name, known));
        }
    }

    @Property
    void one_slip_is_always_forgiven(
            @ForAll @AlphaChars @StringLength(min = 4, max = 20) String word, @ForAll @IntRange(max = 3) int at) {
        TradeName name = TradeName.of(word);
        String dropped = word.substring(0, at) + word.substring(at + 1);
        String changed = word.substring(0, at) + "0" + word.substring(at + 1);
        assertEquals(Optional.of(name), NearestName.of(TradeName.of(dropped), List.of(name)));
        assertEquals(Optional.of(name), NearestName.of(TradeName.of(changed), List.of(name)));
    }

    @Property
    void what_is_suggested_is_always_one_of_the_known_names(
            @ForAll @StringLength(max = 30) String wanted,
            @ForAll List<@LowerChars @StringLength(min = 1, max = 6) String> words) {
        List<TradeName> known = words.stream().map(TradeName::of).toList();
        assertTrue(NearestName.of(wanted, known).map(known::contains).orElse(true));
    }
}
