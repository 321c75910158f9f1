package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.portion;
import static dev.gambrel.tree.Sheet.portioned;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.rules.Held.breaks;
import static dev.gambrel.tree.rules.Held.keepsTheRules;
import static dev.gambrel.tree.rules.Held.only;
import static dev.gambrel.tree.rules.Held.where;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeightsTest {
    private static Sheet of(Quantity low, Quantity high) {
        WeightBand band = new WeightBand.Stated(low, high);
        return Sheet.of(rest("mince")).with(new Carcass(Basis.COLD, List.of(), band, List.of()));
    }

    private static Quantity kilograms(String amount) {
        return Quantity.of(amount, Unit.KILOGRAM);
    }

    @Test
    void a_band_runs_from_light_to_heavy() {
        keepsTheRules(of(kilograms("20"), kilograms("24")));
        keepsTheRules(of(kilograms("20"), kilograms("20.0")));
        Diagnostic finding = only(of(kilograms("24"), kilograms("20")), TreeCode.REVERSED_RANGE);
        assertEquals("The range 24 kg to 20 kg runs from high to low.", finding.message());
        assertEquals("carcass, band", where(finding.place()));
        assertEquals(List.of("Write the smaller figure first: 20 kg to 24 kg."), finding.help());
    }

    @Test
    void a_band_in_two_units_is_compared_by_weight() {
        keepsTheRules(of(kilograms("20"), Quantity.of("52.9", Unit.POUND)));
        breaks(of(kilograms("20"), Quantity.of("44", Unit.POUND)), TreeCode.REVERSED_RANGE);
    }

    @Test
    void a_carcass_weighs_something() {
        keepsTheRules(of(kilograms("0.001"), kilograms("24")));
        Diagnostic finding = only(of(kilograms("0.0"), kilograms("24")), TreeCode.WEIGHT_NOT_POSITIVE);
        assertEquals("A weight must be more than 0; this one is 0.0 kg.", finding.message());
        breaks(of(kilograms("-20"), kilograms("24")), TreeCode.WEIGHT_NOT_POSITIVE);
    }

    @Test
    void a_band_may_be_left_unsaid() {
        keepsTheRules(Sheet.of(rest("mince"))
                .with(new Carcass(Basis.COLD, List.of(), new WeightBand.NotStated(), List.of())));
    }

    @Test
    void a_share_written_as_a_range_runs_from_low_to_high() {
        Diagnostic finding = only(Sheet.of(cut("leg", "34.8 to 31.2"), rest("mince")), TreeCode.REVERSED_RANGE);
        assertEquals("leg, share", where(finding.place()));
    }

    @Test
    void a_spread_is_not_less_than_nothing() {
        keepsTheRules(Sheet.of(cut("leg", "33 ± 0"), rest("mince")));
        Diagnostic finding = only(Sheet.of(cut("leg", "33 ± -0.9"), rest("mince")), TreeCode.NEGATIVE_SPREAD);
        assertEquals("A spread of -0.9 % is less than nothing.", finding.message());
    }

    @ParameterizedTest
    @CsvSource({"180, 170, 190", "170, 170, 190", "190, 170, 190", "180, 180, 180"})
    void a_target_lies_in_its_own_range_or_at_its_ends(String target, String low, String high) {
        keepsTheRules(Sheet.of(portioned(cut("loin", "100"), portion(target, low, high))));
    }

    @Test
    void a_target_that_its_own_range_refuses_is_told() {
        Diagnostic finding = only(
                Sheet.of(portioned(cut("loin", "100"), portion("169.9", "170", "190"))), TreeCode.TARGET_OUTSIDE_RANGE);
        assertEquals("The target of 169.9 g lies outside its own range, 170 g to 190 g.", finding.message());
        assertEquals("loin / steak, share", where(finding.place()));
        assertEquals("loin / steak, limit", where(finding.related().get(0).place()));
        breaks(Sheet.of(portioned(cut("loin", "100"), portion("190.1", "170", "190"))), TreeCode.TARGET_OUTSIDE_RANGE);
    }

    @Test
    void a_range_the_wrong_way_round_is_told_once() {
        breaks(Sheet.of(portioned(cut("loin", "100"), portion("180", "190", "170"))), TreeCode.REVERSED_RANGE);
    }

    @Test
    void a_portion_weighs_something() {
        Diagnostic finding =
                only(Sheet.of(portioned(cut("loin", "100"), portion("0", "0", "190"))), TreeCode.WEIGHT_NOT_POSITIVE);
        assertEquals("loin / steak, share", where(finding.place()));
    }
}
