package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.also;
import static dev.gambrel.tree.Sheet.bone;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.expected;
import static dev.gambrel.tree.Sheet.loss;
import static dev.gambrel.tree.Sheet.name;
import static dev.gambrel.tree.Sheet.portion;
import static dev.gambrel.tree.Sheet.portioned;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.Sheet.sent;
import static dev.gambrel.tree.Sheet.trim;
import static dev.gambrel.tree.rules.Held.breaks;
import static dev.gambrel.tree.rules.Held.keepsTheRules;
import static dev.gambrel.tree.rules.Held.only;
import static dev.gambrel.tree.rules.Held.where;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.term.Judged;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SharesTest {
    @Test
    void every_part_has_a_share_save_a_rest_and_a_trim() {
        keepsTheRules(Sheet.of(cut("leg", "33"), trim("fat", ""), rest("mince")));
        Diagnostic finding = only(Sheet.of(cut("leg", ""), rest("mince")), TreeCode.SHARE_MISSING);
        assertEquals("No share of the carcass is written for the leg.", finding.message());
        breaks(Sheet.of(cut("leg", "33", bone("femur", "")), rest("mince")), TreeCode.SHARE_MISSING);
        breaks(Sheet.of(loss("drip", ""), rest("mince")), TreeCode.SHARE_MISSING);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "100", "0.0001", "0 to 100"})
    void a_share_lies_between_nothing_and_all(String share) {
        keepsTheRules(Sheet.of(cut("leg", share), rest("mince")));
    }

    @Test
    void a_share_is_neither_less_than_nothing_nor_more_than_all() {
        Diagnostic less = only(Sheet.of(cut("leg", "-0.1"), rest("mince")), TreeCode.SHARE_OUT_OF_RANGE);
        assertEquals("A share of -0.1 % is not between 0 % and 100 %.", less.message());
        assertEquals("leg, share", where(less.place()));
        breaks(Sheet.of(cut("leg", "100.01"), rest("mince")), TreeCode.SHARE_OUT_OF_RANGE);
    }

    /** The variance of a share that is either nothing or all: 20 × 80 = 1600, a spread of 40. */
    @Test
    void a_share_strays_no_further_than_between_nothing_and_all() {
        keepsTheRules(Sheet.of(cut("leg", "20 ± 40"), rest("mince")));
        Diagnostic finding = only(Sheet.of(cut("leg", "20 ± 40.1"), rest("mince")), TreeCode.SPREAD_TOO_LARGE);
        assertEquals(
                "A share of 20 % cannot have a spread of 40.1 %: it would be less than nothing or more than all.",
                finding.message());
    }

    @Test
    void chilling_cannot_take_more_than_there_is() {
        keepsTheRules(Sheet.of(rest("mince")).with(chilled("2.4 ± 0.5")));
        Diagnostic finding = only(Sheet.of(rest("mince")).with(chilled("240 ± 0.5")), TreeCode.SHARE_OUT_OF_RANGE);
        assertEquals("carcass, step", where(finding.place()));
        breaks(Sheet.of(rest("mince")).with(chilled("2.4 ± -0.5")), TreeCode.NEGATIVE_SPREAD);
    }

    private static Carcass chilled(String shrink) {
        BasisStep chill = new BasisStep(Basis.WARM, Basis.COLD, name("chill shrink"), expected(shrink));
        return new Carcass(Basis.COLD, List.of(), new WeightBand.NotStated(), List.of(chill));
    }

    @Test
    void a_stream_is_no_leaner_than_all_lean() {
        keepsTheRules(Sheet.of(rest("lean trim")).with(lean("100")));
        Diagnostic finding = only(Sheet.of(rest("lean trim")).with(lean("101")), TreeCode.SHARE_OUT_OF_RANGE);
        assertEquals("carcass, lean 4", where(finding.place()));
    }

    private static Stream lean(String percent) {
        return new Stream(
                name("lean trim"),
                Stream.Kind.SALEABLE,
                new Stream.Lean.Stated(Quantity.of(percent, Unit.PERCENT), Judged.VISUAL));
    }

    @Test
    void what_is_cut_up_is_not_sent_away_whole() {
        keepsTheRules(Sheet.of(sent(cut("neck", "100", bone("neck bones", "30")), "diced")));
        Diagnostic finding = only(
                Sheet.of(sent(cut("leg", "100", cut("chump", "15"), rest("mince")), "diced")),
                TreeCode.DIVIDED_AND_SENT);
        assertEquals("The leg is cut up below, so it cannot go whole to diced as well.", finding.message());
        assertEquals("leg, stream", where(finding.place()));
    }

    @Test
    void what_is_cut_up_is_not_portioned() {
        keepsTheRules(Sheet.of(portioned(cut("loin", "100"), portion("180", "170", "190"))));
        Diagnostic finding = only(
                Sheet.of(portioned(cut("leg", "100", cut("chump", "15"), rest("mince")), portion("180", "170", "190"))),
                TreeCode.PORTION_OF_DIVIDED);
        assertEquals("The leg is cut up below, so no steak can be cut from it.", finding.message());
        assertEquals("leg / steak, name", where(finding.place()));
    }

    /** The shares on the way multiply: 20 % of 33 % is 6.6 % of the carcass. */
    @ParameterizedTest
    @CsvSource({"6.6, carcass", "6.65, carcass", "6.55, carcass", "20, leg", "20.05, LEG"})
    void a_second_share_agrees_with_the_first_within_0_05_point(String share, String of) {
        keepsTheRules(topside("33", "20", share, of));
    }

    @Test
    void the_tolerance_holds_to_the_last_digit() {
        keepsTheRules(topside("5", "10", "0.55", "carcass"));
        keepsTheRules(topside("5", "10", "0.45", "carcass"));
        keepsTheRules(topside("50", "20", "10.05", "carcass"));
        breaks(topside("5", "10", "0.5501", "carcass"), TreeCode.SHARE_CONTRADICTION);
        breaks(topside("5", "10", "0.4499", "carcass"), TreeCode.SHARE_CONTRADICTION);
    }

    @Test
    void a_second_share_that_differs_is_a_contradiction() {
        Diagnostic finding = only(topside("33", "20", "7.0", "carcass"), TreeCode.SHARE_CONTRADICTION);
        assertEquals(
                "The share of the topside is written as 7.0 % of carcass, but the shares on the way make it 6.60 %.",
                finding.message());
        assertEquals("leg / topside, derived_share", where(finding.place()));
        assertEquals("leg / topside, share", where(finding.related().get(0).place()));
        assertEquals(
                "this share of the leg leads to 6.60 %",
                finding.related().get(0).words());
    }

    @Test
    void a_second_share_is_of_the_carcass_or_of_a_cut_above() {
        Diagnostic finding = only(topside("33", "20", "20", "lge"), TreeCode.UNKNOWN_BASE);
        assertEquals(
                "A share of the topside is written of lge, which is neither the carcass nor a cut above it.",
                finding.message());
        assertEquals(List.of("Did you mean “leg”?"), finding.help());
        breaks(topside("33", "20", "20", "topside"), TreeCode.UNKNOWN_BASE);
    }

    @Test
    void where_a_share_on_the_way_is_missing_nothing_is_concluded() {
        Sheet sheet =
                Sheet.of(cut("leg", "", also(cut("topside", "20"), "50", "carcass"), rest("mince")), rest("mince"));
        breaks(sheet, TreeCode.SHARE_MISSING);
    }

    private static Sheet topside(String leg, String topside, String share, String of) {
        return Sheet.of(cut("leg", leg, also(cut("topside", topside), share, of), rest("mince")), rest("mince"));
    }
}
