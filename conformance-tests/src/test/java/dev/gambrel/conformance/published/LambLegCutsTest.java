package dev.gambrel.conformance.published;

import static dev.gambrel.conformance.published.WeighedCarcass.assertPrinted;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * AHDB, Lamb yield guide, leg cuts of a 20.12 kg carcass of class R3L after 7 days.
 *
 * <p>The share of the leg itself, 34.39 %, is not printed: it follows from the rows.
 */
class LambLegCutsTest {
    private static final String FILE = "10-lamb-leg-cuts.cuts";
    private static final String SOURCE = "UKLAMB, AHDB, Lamb yield guide, leg cuts";

    private final WeighedCarcass carcass = PublishedTable.of(FILE).weighed("20.12", Unit.KILOGRAM, Basis.COLD);

    @ParameterizedTest
    @CsvSource(textBlock = """
            topside roast, 0.54, 7.80, 2.68
            thick flank, 0.40, 5.78, 1.99
            silverside with heel, 0.51, 7.37, 2.53
            chateaubriand, 0.10, 1.45, 0.50
            """)
    void a_cut_of_the_leg_has_its_printed_weight_and_both_its_shares(
            String cut, String kilograms, String ofLeg, String ofCarcass) {
        assertPrinted(kilograms, carcass.weight("leg / " + cut), SOURCE);
        assertPrinted(ofLeg, carcass.percentOfCutAbove("leg / " + cut), SOURCE);
        assertPrinted(ofCarcass, carcass.percentOfCarcass("leg / " + cut), SOURCE);
    }

    @Test
    void the_shank_is_printed_as_2_28_of_the_carcass_where_2_29_is_nearest() {
        // 0.46 kg of 20.12 is 2.286 %: the print rounds it down. Within the 0.05 point allowed, so nothing is reported.
        assertPrinted("0.46", carcass.weight("leg / shank"), SOURCE);
        assertPrinted("6.65", carcass.percentOfCutAbove("leg / shank"), SOURCE);
        double ofCarcass = carcass.percentOfCarcass("leg / shank");
        assertEquals("2.29", Printed.like("2.28", ofCarcass), SOURCE);
        assertEquals("2.28", Printed.rounded(ofCarcass, 2, RoundingMode.DOWN), SOURCE);
    }

    @Test
    void both_columns_agree_so_nothing_is_reported() {
        assertEquals(List.of(), slugs(PublishedTable.text(FILE)));
    }

    @Test
    void columns_taken_for_each_other_are_reported() {
        String swapped = PublishedTable.text(FILE).replace("7.80 %, 2.68 % of carcass", "2.68 %, 7.80 % of carcass");
        assertEquals(List.of("share-contradiction"), slugs(swapped));
    }

    @Test
    void the_table_is_a_part_of_the_leg_only_and_says_so_when_no_rest_is_written() {
        String text = PublishedTable.text(FILE).replace("  rest -> not printed\n", "");
        Diagnostic finding = PublishedTable.check(FILE, text).diagnostics().get(0);
        assertEquals("sum-not-100", finding.code().slug());
        assertEquals("29.05 %", PublishedTable.argument("sum", finding));
        assertEquals("70.95 points", PublishedTable.argument("gap", finding));
    }

    private static List<String> slugs(String text) {
        return PublishedTable.check(FILE, text).diagnostics().stream()
                .map(finding -> finding.code().slug())
                .toList();
    }
}
