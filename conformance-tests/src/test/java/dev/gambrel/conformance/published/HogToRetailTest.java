package dev.gambrel.conformance.published;

import static dev.gambrel.conformance.published.WeighedCarcass.assertPrinted;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.yields.Outcome;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Oklahoma Department of Agriculture, hog weight brochure. */
class HogToRetailTest {
    private static final String SOURCE = "OKHOG, hog weight brochure: 250 lb hog, 180 lb carcass, 144 lb retail";

    private final WeighedCarcass hog =
            PublishedTable.of("13-hog-to-retail.cuts").weighed("250", Unit.POUND, Basis.LIVE);

    @ParameterizedTest
    @CsvSource(textBlock = """
            fresh ham, 28
            loin, 23
            fresh side, 23
            spareribs, 6
            Boston butt, 9
            fresh picnic, 12
            feet, 3
            head, 5
            back fat, 23
            miscellaneous trim, 9
            jowl, 3
            """)
    void each_line_has_its_printed_pounds(String line, String pounds) {
        assertPrinted(pounds, hog.weight(line), SOURCE);
    }

    @Test
    void a_live_hog_of_250_pounds_is_a_carcass_of_180_and_144_to_sell() {
        assertPrinted("180", hog.carcass(), SOURCE);
        assertPrinted("144", hog.total(Outcome.SALEABLE), SOURCE);
        assertPrinted("20", hog.percentOfCarcass("cutting"), SOURCE);
    }

    @Test
    void retail_is_printed_as_57_per_cent_of_live_weight_where_58_is_nearest() {
        // 144 of 250 lb is 57.6 %: the print rounds it down.
        double ofLive = 100 * hog.total(Outcome.SALEABLE) / 250;
        assertPrinted("57.6", ofLive, SOURCE);
        assertEquals("57", Printed.rounded(ofLive, 0, RoundingMode.DOWN), SOURCE);
    }
}
