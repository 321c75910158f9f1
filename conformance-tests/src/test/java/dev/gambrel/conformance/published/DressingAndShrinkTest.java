package dev.gambrel.conformance.published;

import static dev.gambrel.conformance.published.WeighedCarcass.assertPrinted;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Raines, The butcher kept your meat?, Pennsylvania State University, and University of Maryland western research centre, raw
 * carcass data 2019.
 */
class DressingAndShrinkTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            hog, 245, 176
            steer, 1312, 787
            sheep, 127, 66
            """)
    void an_animal_dresses_out_at_its_printed_carcass_weight(String animal, String live, String carcass) {
        // Printed dressing percentages: hog 72, steer 60, sheep 52.
        WeighedCarcass weighed =
                PublishedTable.of("27-dressing-" + animal + ".cuts").weighed(live, Unit.POUND, Basis.LIVE);
        assertPrinted(carcass, weighed.carcass(), "PSU, The butcher kept your meat?");
    }

    @Test
    void the_mean_lamb_of_60_6_pounds_hot_weighs_58_3_cold() {
        // LAMBUMD, 64 lambs: hot 60.6 lb, cold shrink 3.8 %, cold 58.3 lb.
        WeighedCarcass lamb = PublishedTable.of("26-lamb-cold-shrink.cuts").weighed("60.6", Unit.POUND, Basis.WARM);
        assertPrinted("58.3", lamb.carcass(), "LAMBUMD, raw carcass data 2019");
    }
}
