package dev.gambrel.conformance.published;

import static dev.gambrel.conformance.published.WeighedCarcass.assertPrinted;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.yields.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Washington State Department of Agriculture, Processing Percentage Charts. */
class QuartersAndHalfPorkTest {
    private static final String SOURCE = "WSDA, Processing Percentage Charts";

    private final WeighedCarcass side =
            PublishedTable.of("04-beef-quarters.cuts").weighed("271", Unit.POUND, Basis.COLD);
    private final WeighedCarcass pork = PublishedTable.of("04-half-pork.cuts").weighed("75", Unit.POUND, Basis.COLD);

    @ParameterizedTest
    @CsvSource(textBlock = """
            front quarter / rib roast and steaks, 12, 9
            front quarter / boneless stew, 6, 4
            front quarter / short ribs, 4, 3
            front quarter / hamburger, 38, 27
            front quarter / chuck roast and steaks, 37, 26
            front quarter / bone fat and trimmings, 43, 31
            hind quarter / T-bone and club steaks, 18, 14
            hind quarter / sirloin steaks and roasts, 16, 12
            hind quarter / round steaks or roasts, 29, 22
            hind quarter / boneless rump roasts, 8, 6
            hind quarter / flank steak, 2, 2
            hind quarter / ground beef, 16, 12
            hind quarter / bone fat and trimmings, 42, 32
            """)
    void each_line_of_a_beef_quarter_has_its_printed_pounds_and_share(String line, String pounds, String percent) {
        assertPrinted(pounds, side.weight(line), SOURCE);
        assertPrinted(percent, side.percentOfCutAbove(line), SOURCE);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            ham, 12, 16
            loin roast and chops, 9, 12
            bacon, 10, 13
            spareribs, 2, 3
            shoulder butt, 6, 8
            shoulder picnic, 7, 9
            sausage, 6, 8
            lard, 15, 20
            bone fat and trimmings, 8, 11
            """)
    void each_line_of_half_a_pig_has_its_printed_pounds_and_share(String line, String pounds, String percent) {
        assertPrinted(pounds, pork.weight(line), SOURCE);
        assertPrinted(percent, pork.percentOfCutAbove(line), SOURCE);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            front quarter, 140, 97, 69
            hind quarter, 131, 89, 68
            """)
    void the_meat_of_a_quarter_comes_to_the_printed_total(String quarter, String pounds, String meat, String percent) {
        // An older copy of the page prints 88 for the 89 of the hind quarter; with 42 of bone, fat and trimmings only
        // 89
        // makes 131.
        assertPrinted(pounds, side.weight(quarter), SOURCE);
        assertPrinted(meat, side.products(quarter), SOURCE);
        assertPrinted(percent, 100 * side.products(quarter) / side.weight(quarter), SOURCE);
    }

    @Test
    void the_meat_of_half_a_pig_comes_to_the_printed_total() {
        assertPrinted("52", pork.total(Outcome.SALEABLE), SOURCE);
        assertPrinted("69", 100 * pork.total(Outcome.SALEABLE) / pork.carcass(), SOURCE);
    }

    @Test
    void the_printed_quarters_make_271_pounds_where_the_side_is_printed_as_about_270() {
        assertPrinted("271", side.weight("front quarter") + side.weight("hind quarter"), SOURCE);
    }
}
