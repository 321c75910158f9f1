package dev.gambrel.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.CharRange;
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

    @Property(tries = 2000)
    void the_near_are_those_that_plain_counting_finds_near(
            @ForAll @CharRange(from = 'a', to = 'c') @StringLength(min = 3, max = 12) String wanted,
            @ForAll @CharRange(from = 'a', to = 'c') @StringLength(min = 1, max = 14) String known) {
        TradeName name = TradeName.of(known);
        boolean near = distance(wanted, known) <= wanted.length() / 3;
        assertEquals(near, NearestName.of(TradeName.of(wanted), List.of(name)).isPresent());
    }

    /** The definition, without any saving. */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
