package dev.gambrel.compiler.lower;

import static dev.gambrel.compiler.Compiled.codes;
import static dev.gambrel.compiler.Compiled.messages;
import static dev.gambrel.compiler.Compiled.sheet;
import static dev.gambrel.compiler.Compiled.tree;
import static dev.gambrel.compiler.Compiled.underlined;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Limit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTest {
    private static Expected share(String written) {
        Part leg = tree("cut leg " + written + "\nrest -> mince\n").parts().get(0);
        return ((Share.Stated) leg.share()).expected();
    }

    private static String portionLine(String written) {
        return "cut leg 33 % {\n  portion steak " + written + ", remainder -> mince\n}\nrest -> mince\n";
    }

    private static Portion portion(String written) {
        return ((Cut) tree(portionLine(written)).parts().get(0)).portions().get(0);
    }

    private static Quantity percent(String amount) {
        return Quantity.of(amount, Unit.PERCENT);
    }

    @Test
    void a_figure_is_kept_as_it_was_written() {
        assertEquals(new Expected.Mean(percent("33.0")), share("33.0 %"));
        assertEquals(new Expected.PlusMinus(percent("33.0"), percent("0.90")), share("33.0 % ± 0.90 %"));
        assertEquals(new Expected.CentralRange(percent("31.2"), percent("34.8")), share("31.2 % to 34.8 %"));
    }

    @Test
    void one_unit_serves_for_both_figures() {
        assertEquals(new Expected.CentralRange(percent("31.2"), percent("34.8")), share("31.2 to 34.8 %"));
        assertEquals(new Expected.PlusMinus(percent("33"), percent("0.9")), share("33 ± 0.9 %"));
    }

    /** Sixteen ounces are a pound, so 7 lb 6 oz is 7.375 lb. */
    @ParameterizedTest
    @CsvSource({
        "180 g, 180, GRAM",
        "0.18 kilos, 0.18, KILOGRAM",
        "8 oz, 8, OUNCE",
        "1/2 lb, 0.5, POUND",
        "7 lb 6 oz, 7.375, POUND"
    })
    void a_portion_is_weighed_in_the_unit_of_the_house(String written, String amount, Unit unit) {
        assertEquals(
                new Aim.Weight(new Expected.Mean(Quantity.of(amount, unit))),
                portion(written).aim());
    }

    @Test
    void pounds_and_ounces_of_very_many_digits_are_told_and_not_thrown() {
        String weight = "1 lb 0." + "1".repeat(33) + " oz";
        var result = sheet(portionLine(weight));
        assertEquals(List.of(SyntaxCode.NUMBER_TOO_LONG), codes(result));
        assertEquals(weight, underlined(result.diagnostics().get(0)));
    }

    @Test
    void what_is_accepted_is_a_limit_and_what_is_aimed_at_an_expectation() {
        Portion steak = portion("180 g ± 6 g, between 170 g and 190 g");
        assertEquals(
                new Limit.Between(Quantity.of("170", Unit.GRAM), Quantity.of("190", Unit.GRAM)),
                steak.acceptance().weight());
        assertInstanceOf(Expected.PlusMinus.class, steak.aim().targetWeight().orElseThrow());
        assertEquals(Acceptance.NONE, portion("180 g").acceptance());
    }

    @Test
    void a_bare_number_is_asked_for_its_unit() {
        var result = sheet("cut leg 33.0\nrest -> mince\n");
        assertEquals(List.of("The figure 33.0 has no unit; a share is wanted here."), messages(result));
        assertEquals("33.0", underlined(result.diagnostics().get(0)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"33 kg", "33 mm", "33 °C", "33 days"})
    void a_share_is_not_a_weight_nor_anything_else(String written) {
        var result = sheet("cut leg " + written + "\nrest -> mince\n");
        assertEquals(List.of(MeaningCode.WRONG_DIMENSION), codes(result));
        assertEquals(written, underlined(result.diagnostics().get(0)));
    }

    @Test
    void a_misspelt_unit_gets_the_nearest() {
        var result = sheet(portionLine("180 kgg"));
        assertEquals(List.of("“kgg” is not a unit that the language knows."), messages(result));
        assertEquals(List.of("Did you mean “kg”?"), result.diagnostics().get(0).help());
    }

    @Test
    void only_pounds_and_ounces_are_written_together() {
        assertEquals(
                List.of("The units kg and g are not written together."), messages(sheet(portionLine("1 kg 50 g"))));
    }
}
