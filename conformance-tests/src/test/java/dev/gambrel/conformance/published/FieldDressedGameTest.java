package dev.gambrel.conformance.published;

import static dev.gambrel.conformance.published.WeighedCarcass.assertPrinted;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Michigan State University Extension, Preserving Food Safely, file 01600637, and University of Wyoming Agricultural
 * Experiment Station, The Mule Deer Carcass, B-589R, 2003, as quoted elsewhere.
 *
 * <p>In both, all boneless cuts are 48 % of the field-dressed weight. The bone-in column of the first is a straight line
 * with an offset, which is no fixed share and is not written in the language.
 */
class FieldDressedGameTest {
    private static final String GAME = "MSUGAME, weights of cuts to expect from field-dressed game";
    private static final String MULE_DEER = "WYODEER, The Mule Deer Carcass";

    @ParameterizedTest
    @CsvSource(textBlock = """
            60, 28.8
            70, 33.6
            80, 38.4
            90, 43.2
            100, 48.0
            110, 52.8
            120, 57.6
            130, 62.4
            140, 67.2
            150, 72.0
            160, 76.8
            170, 81.6
            180, 86.4
            190, 91.2
            200, 96.0
            """)
    void game_of_the_size_of_deer_gives_its_printed_boneless_pounds(String fieldDressed, String boneless) {
        assertPrinted(boneless, game(fieldDressed), GAME);
    }

    @Test
    void the_printed_24_8_pounds_of_50_is_a_misprint_for_24_0() {
        // Every other row is 48 %; 24.8 of 50 would be 49.6 %.
        assertEquals("24.0", Printed.like("24.8", game("50")), GAME);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            buck 1.5 to 2.5 years, 102, 49
            buck 3.5 to 4.5 years, 150, 72
            buck 5.5 to 6.5 years, 192, 92
            buck 7.5 years or more, 207, 99
            doe 1.5 to 2.5 years, 85, 41
            doe 3.5 to 4.5 years, 93, 45
            doe 5.5 to 6.5 years, 102, 49
            doe 7.5 years or more, 130, 62
            """)
    void a_mule_deer_gives_its_printed_boneless_pounds(String deer, String fieldDressed, String boneless) {
        WeighedCarcass carcass =
                PublishedTable.of("23-mule-deer-boneless.cuts").weighed(fieldDressed, Unit.POUND, Basis.IN_SKIN);
        assertPrinted(boneless, carcass.weight("boneless meat"), MULE_DEER + ", " + deer);
    }

    private static double game(String fieldDressed) {
        return PublishedTable.of("21-game-boneless.cuts")
                .weighed(fieldDressed, Unit.POUND, Basis.IN_SKIN)
                .weight("all cuts boneless");
    }
}
