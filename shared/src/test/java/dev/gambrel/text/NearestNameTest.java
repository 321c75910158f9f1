package dev.gambrel.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {
    private static final List<TradeName> CUTS = names("topside", "silverside", "shank", "leg", "salmon cut");

    private static List<TradeName> names(String... names) {
        return List.of(names).stream().map(TradeName::of).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "tospide, topside, two neighbours swapped",
        "topsde, topside, a letter dropped",
        "toppside, topside, a letter too many",
        "topsida, topside, a letter changed",
        "TOPSIED, topside, whatever the case",
        "silversdie, silverside, swapped in a longer word",
        "shnk, shank, a letter dropped from a short word",
        "lge, leg, a swap counts once",
        "salmoncut, salmon cut, a space forgotten"
    })
    void the_name_that_was_meant_is_found(String written, String meant, String why) {
        assertEquals(Optional.of(TradeName.of(meant)), NearestName.of(TradeName.of(written), CUTS), why);
    }

    @Test
    void a_name_that_is_too_far_from_all_is_not_guessed_at() {
        assertEquals(Optional.empty(), NearestName.of(TradeName.of("brisket"), CUTS));
        assertEquals(Optional.empty(), NearestName.of(TradeName.of("lug nut"), CUTS));
        assertEquals(Optional.empty(), NearestName.of(TradeName.of("leg"), List.of()));
    }

    @Test
    void up_to_a_third_of_the_letters_may_differ() {
        List<TradeName> nine = names("abcdefghi");
        assertEquals(Optional.of(nine.get(0)), NearestName.of(TradeName.of("abcdefxyz"), nine));
        assertEquals(Optional.empty(), NearestName.of(TradeName.of("abcdewxyz"), nine));
    }

    @Test
    void of_a_long_name_no_more_than_six_letters_may_differ() {
        List<TradeName> long30 = names("abcdefghijklmnopqrstuvwxyzabcd");
        assertEquals(
                Optional.of(long30.get(0)), NearestName.of(TradeName.of("000000ghijklmnopqrstuvwxyzabcd"), long30));
        assertEquals(Optional.empty(), NearestName.of(TradeName.of("0000000hijklmnopqrstuvwxyzabcd"), long30));
    }

    @Test
    void of_very_many_names_only_the_first_256_are_looked_at() {
        List<TradeName> many =
                IntStream.range(0, 257).mapToObj(i -> TradeName.of("joint" + i)).toList();
        assertEquals(Optional.of(many.get(255)), NearestName.of(TradeName.of("joint255"), many));
        assertEquals(Optional.of(many.get(25)), NearestName.of(TradeName.of("joint256"), many), "joint256 is not seen");
    }

    @Test
    void of_two_equally_near_names_the_earlier_is_taken() {
        assertEquals(
                Optional.of(TradeName.of("rack")), NearestName.of(TradeName.of("back"), names("rack", "sack", "bark")));
        assertEquals(
                Optional.of(TradeName.of("sack")), NearestName.of(TradeName.of("back"), names("sack", "rack", "bark")));
    }

    @Test
    void a_nearer_name_is_taken_before_an_earlier_one() {
        assertEquals(
                Optional.of(TradeName.of("topside")),
                NearestName.of(TradeName.of("topsid"), names("tipsxd", "topside", "topsxx")));
    }

    @Test
    void a_text_that_is_no_name_is_near_to_none() {
        assertEquals(Optional.empty(), NearestName.of("leg/", CUTS));
        assertEquals(Optional.empty(), NearestName.of("", CUTS));
        assertEquals(Optional.of(TradeName.of("leg")), NearestName.of("lex", CUTS));
    }
}
