package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheep.figure;
import static dev.gambrel.tree.Sheep.published;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.rules.Held.breaks;
import static dev.gambrel.tree.rules.Held.keepsTheRules;
import static dev.gambrel.tree.rules.Held.only;
import static dev.gambrel.tree.rules.Held.where;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.tree.Sheep;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Legs of 32 % (IASRI, fabrication of lamb carcasses) and 34.39 % (AHDB, Lamb yield guide) of the carcass. */
class PublishedSharesTest {
    private static Sheet leg(String share, Piece... pieces) {
        return Sheet.of(cut("leg", share, cut("shank", "20"), rest("mince")), rest("mince"))
                .of(Sheep.species(pieces))
                .citing("IASRI", Source.Kind.PUBLISHED)
                .citing("AHDB", Source.Kind.PUBLISHED)
                .citing("heard", Source.Kind.MEMORY)
                .citing("weighed", Source.Kind.MEASURED);
    }

    private static Piece twice() {
        return published("leg", figure("32", "carcass", "IASRI"), figure("34.39", "carcass", "AHDB"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"33.0", "32", "34.39", "30.4", "36.1095", "33 ± 9", "29.4 ± 0.5"})
    void a_share_within_a_twentieth_and_two_of_its_spreads_of_print_is_usual(String share) {
        keepsTheRules(leg(share, twice()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"30.39", "36.11", "40", "29.4 ± 0.49", "29 to 29.5"})
    void a_share_outside_is_told_of(String share) {
        breaks(leg(share, twice()), TreeCode.OUTSIDE_PUBLISHED);
    }

    @Test
    void what_is_published_is_cited_with_its_basis() {
        Diagnostic finding = only(leg("40", twice()), TreeCode.OUTSIDE_PUBLISHED);
        assertEquals("The leg is 40.00 % of carcass; published figures run from 32 % to 34.39 %.", finding.message());
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals("leg, share", where(finding.place()));
        assertEquals(
                List.of(
                        "32 % of carcass: IASRI, page 6",
                        "34.39 % of carcass: AHDB, page 6",
                        "A twentieth of a figure, and two of the house's own spreads, are allowed for."),
                finding.notes());
    }

    @Test
    void one_figure_is_no_range() {
        keepsTheRules(leg("40", published("leg", figure("32", "carcass", "IASRI"))));
        keepsTheRules(leg("40", published("leg", figure("32 ± 1", "carcass", "IASRI"))));
    }

    @Test
    void a_published_range_is_one() {
        Piece range = published("leg", figure("31 to 35", "carcass", "IASRI"));
        keepsTheRules(leg("36.75", range));
        breaks(leg("36.76", range), TreeCode.OUTSIDE_PUBLISHED);
    }

    @Test
    void figures_of_different_bases_do_not_make_a_range() {
        keepsTheRules(leg("40", published("leg", figure("32", "carcass", "IASRI"), figure("34", "side", "AHDB"))));
    }

    @Test
    void what_is_only_remembered_or_weighed_is_not_print() {
        keepsTheRules(leg("40", published("leg", figure("31 to 35", "carcass", "heard"))));
        keepsTheRules(leg("40", published("leg", figure("31 to 35", "carcass", "weighed"))));
        keepsTheRules(leg("40", published("leg", figure("32", "carcass", "IASRI"), figure("34", "carcass", "heard"))));
    }

    /** Edges at which a share as a binary fraction falls short of the printed figure. */
    @ParameterizedTest
    @ValueSource(strings = {"0.05", "0.15", "0.55", "1.05", "2.85", "5.55", "8.35", "28.95", "57.05", "99.05"})
    void a_share_that_rounds_to_a_printed_figure_agrees_with_it(String share) {
        String up = new java.math.BigDecimal(share)
                .add(new java.math.BigDecimal("0.05"))
                .toString();
        String down = new java.math.BigDecimal(share)
                .subtract(new java.math.BigDecimal("0.05"))
                .toString();
        keepsTheRules(leg(share, published("leg", figure(tenth(up) + " to 100", "carcass", "IASRI"))));
        keepsTheRules(leg(share, published("leg", figure("0 to " + tenth(down), "carcass", "IASRI"))));
    }

    private static String tenth(String figure) {
        return new java.math.BigDecimal(figure).setScale(1).toString();
    }

    @Test
    void a_share_of_a_larger_piece_is_held_against_figures_of_that_piece() {
        Piece shank = published("shank", figure("6 to 8", "leg", "AHDB"));
        Diagnostic finding = only(leg("33", twice(), shank), TreeCode.OUTSIDE_PUBLISHED);
        assertEquals("The shank is 20.00 % of leg; published figures run from 6 % to 8 %.", finding.message());
        keepsTheRules(leg("33", twice(), published("shank", figure("19 to 21", "leg", "AHDB"))));
    }

    @Test
    void a_figure_of_the_carcass_is_held_against_the_share_down_the_tree() {
        keepsTheRules(leg("33", twice(), published("shank", figure("6 to 7", "carcass", "AHDB"))));
        breaks(leg("33", twice(), published("shank", figure("8 to 9", "carcass", "AHDB"))), TreeCode.OUTSIDE_PUBLISHED);
    }
}
