package dev.gambrel.conformance.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Michigan State University Extension, Preserving Food Safely, files 01600637 and 01600636: what a field-dressed animal
 * gives, bone in and boneless. The lines are worked out from the tables.
 */
class GameEquationsTest {
    private static final String SOURCE = "MSUGAME, weights of cuts to expect from field-dressed game";

    private final CatalogueEquations game = CatalogueEquations.of("game equations");

    private void assertRow(String size, String weight, String boneIn, String boneless) {
        String reading = "field-dressed weight = " + weight + " lb";
        assertEquals(boneIn, game.printed(boneIn, "bone-in cuts of " + size, reading), SOURCE);
        assertEquals(boneless, game.printed(boneless, "boneless cuts of " + size, reading), SOURCE);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            60, 32.9, 28.8
            70, 39.0, 33.6
            80, 45.1, 38.4
            90, 51.2, 43.2
            100, 57.3, 48.0
            110, 63.4, 52.8
            120, 69.5, 57.6
            130, 75.6, 62.4
            140, 81.7, 67.2
            150, 87.8, 72.0
            160, 93.9, 76.8
            170, 100.0, 81.6
            180, 106.1, 86.4
            190, 112.2, 91.2
            200, 118.3, 96.0
            """)
    void deer_give_their_printed_pounds(String weight, String boneIn, String boneless) {
        assertRow("deer", weight, boneIn, boneless);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            200, 111.2, 86.0
            250, 139.7, 107.5
            300, 168.2, 129.0
            350, 196.7, 150.5
            400, 225.2, 172.0
            450, 253.7, 193.5
            500, 282.2, 215.0
            550, 310.7, 236.5
            600, 339.2, 258.0
            650, 367.7, 279.5
            """)
    void elk_and_moose_give_their_printed_pounds(String weight, String boneIn, String boneless) {
        assertRow("elk", weight, boneIn, boneless);
    }

    @Test
    void the_two_cells_that_do_not_follow_their_line_are_misprints() {
        assertRow("deer", "50", "26.8", "24.0"); // printed 24.8 boneless
        assertRow("elk", "700", "396.2", "301.0"); // printed 296.2 bone in
    }
}
