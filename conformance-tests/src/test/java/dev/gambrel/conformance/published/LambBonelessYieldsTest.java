package dev.gambrel.conformance.published;

import static dev.gambrel.conformance.published.WeighedCarcass.assertPrinted;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Handbook on cutting lamb, prepared for the US Army by the National Live Stock and Meat Board, page 6.
 *
 * <p>The shares of the carcass are checked as printed. Boneless yields were read by machine from a copy in which that of the
 * legs cannot be made out: they are held to half a point only.
 */
class LambBonelessYieldsTest {
    private static final String SOURCE = "LAMBARMY, Handbook on cutting lamb, page 6";
    private static final double SOFT = 0.5;

    private final WeighedCarcass carcass =
            PublishedTable.of("16-lamb-cutting-test.cuts").weighed("100", Unit.POUND, Basis.COLD);

    @ParameterizedTest
    @CsvSource(textBlock = """
            legs, 32
            loin, 13
            rack, 11
            shoulders, 23
            breasts shanks and neck, 21
            """)
    void each_primal_of_a_100_pound_carcass_has_its_printed_share(String primal, String percent) {
        assertPrinted(percent, carcass.percentOfCarcass(primal), SOURCE);
        assertPrinted(percent, carcass.weight(primal), SOURCE);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            loin / boneless roasts, 54
            rack / boneless roasts, 60
            shoulders / boneless roasts or stew, 69
            breasts shanks and neck / boneless lean meat, 38
            """)
    void boneless_yields_of_a_primal_are_near_the_printed_ones(String line, double percent) {
        assertEquals(percent, carcass.percentOfCutAbove(line), SOFT, SOURCE);
    }

    @Test
    void shoulders_with_breasts_shanks_and_necks_yield_what_is_printed_of_triangles() {
        // Printed of triangles: 54.5 %. That a triangle is these primals is inferred; 23.85 of 44 lb is 54.2 %.
        double meat = carcass.products("shoulders") + carcass.products("breasts shanks and neck");
        double primals = carcass.weight("shoulders") + carcass.weight("breasts shanks and neck");
        assertEquals(54.5, 100 * meat / primals, SOFT, SOURCE);
    }
}
