package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.chill;
import static dev.gambrel.yields.Sheet.cold;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.kilograms;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.row;
import static dev.gambrel.yields.Sheet.sd;
import static dev.gambrel.yields.Sheet.tree;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.yields.figure.Estimate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CarcassWeightTest {
    private static final Part LEG = pair("leg", "33.0 ± 0.9");
    private static final CutTree HOGGET = hogget(LEG, rest("mince"));
    private static final CutTree CHILLED = hogget(List.of(chill("2 ± 0.4")), LEG, rest("mince"));

    private static Diagnostic only(Result<ExpectedYields> result) {
        assertEquals(1, result.diagnostics().size());
        return result.diagnostics().get(0);
    }

    /** Worked scene of the design, 8: 47.4 lb is 21.500278 kg. */
    @Test
    void pounds_in_the_kilogram_column_are_asked_about_and_not_converted() {
        Result<ExpectedYields> result = Yields.of(HOGGET).forCarcass(kilograms("47.4", Basis.COLD));
        Diagnostic found = only(result);
        assertEquals(YieldCode.OUTSIDE_BAND, found.code());
        assertEquals(
                "The carcass weighs 47.4 kg, outside the 20 kg to 24 kg that this specification is for. Were these pounds?"
                        + " 47.4 lb is 21.5003 kg, inside the band; 47.4 kg is 104.4991 lb. Nothing was converted.",
                found.message());
        Estimate legs = row(result.orElseThrow(), "leg").allPieces().orElseThrow();
        assertEquals(15.6420, legs.mean(), 1e-9);
    }

    /** Worked scene of the design, 8. */
    @Test
    void the_same_weight_in_pounds_is_inside_the_band() {
        CarcassWeight pounds = new CarcassWeight(Quantity.of("47.4", Unit.POUND), Basis.COLD);
        Result<ExpectedYields> result = Yields.of(HOGGET).forCarcass(pounds);
        assertTrue(result.diagnostics().isEmpty());
        assertEquals(
                7.0951,
                row(result.orElseThrow(), "leg").allPieces().orElseThrow().mean(),
                1e-4);
    }

    @Test
    void kilograms_in_the_pound_column_are_asked_about() {
        CarcassWeight pounds = new CarcassWeight(Quantity.of("22", Unit.POUND), Basis.COLD);
        String message = only(Yields.of(HOGGET).forCarcass(pounds)).message();
        assertTrue(message.contains("Were these kilograms? 22 kg is 48.5017 lb, inside the band"), message);
    }

    @Test
    void a_weight_that_fits_in_no_unit_is_only_reported() {
        Diagnostic found = only(Yields.of(HOGGET).forCarcass(kilograms("30", Basis.COLD)));
        assertEquals(
                "The carcass weighs 30 kg, outside the 20 kg to 24 kg that this specification is for.",
                found.message());
    }

    @ParameterizedTest
    @ValueSource(strings = {"20", "24", "22.0"})
    void both_ends_of_the_band_belong_to_it(String weight) {
        assertTrue(Yields.of(HOGGET)
                .forCarcass(kilograms(weight, Basis.COLD))
                .diagnostics()
                .isEmpty());
    }

    @Test
    void a_warm_weight_on_a_cold_sheet_is_refused_with_what_to_write() {
        Result<ExpectedYields> result = Yields.of(HOGGET).forCarcass(kilograms("22", Basis.WARM));
        Diagnostic found = only(result);
        assertTrue(result.value().isEmpty());
        assertEquals(YieldCode.BASIS_DIFFERS, found.code());
        assertEquals(
                "The weight given is 22 kg warm, but this specification is for cold weight, and it does not say what is"
                        + " lost between the two.",
                found.message());
        assertEquals(
                List.of(
                        "Give the weight cold.",
                        "Or write a line that says what is lost: `from warm to cold, loss chill shrink 2 % ± 0.4"
                                + " %`, with your own figures."),
                found.help());
    }

    @Test
    void a_warm_weight_loses_its_chill_shrink_first() {
        ExpectedYields yields =
                Yields.of(CHILLED).forCarcass(kilograms("22.5", Basis.WARM)).orElseThrow();
        assertEquals(
                List.of("carcass, warm", "chill shrink", "carcass, cold", "leg", "rest"),
                yields.rows().stream().map(YieldRow::name).toList());
        assertEquals(0.45, yields.total(Outcome.LOSS).mean(), 1e-12);
        assertEquals(0.09, sd(yields.total(Outcome.LOSS)), 1e-12);
        assertEquals(22.05, yields.carcass().allPieces().orElseThrow().mean(), 1e-12);
        assertEquals(33, row(yields, "leg").percentOfCarcass().orElseThrow(), 1e-9);
        assertTrue(yields.weighed().percentOfCarcass().isEmpty());
        double exact = 22.5 * Math.sqrt(0.98 * 0.98 * 8.1e-5 + 1.6e-5 * (0.33 * 0.33 + 8.1e-5));
        assertEquals(exact, sd(row(yields, "leg").allPieces().orElseThrow()), 1e-12);
    }

    @Test
    void a_cold_weight_on_a_warm_sheet_cannot_be_warmed_up() {
        Carcass warm = new Carcass(Basis.WARM, List.of(), new WeightBand.NotStated(), List.of(chill("2")));
        Diagnostic found = only(Yields.of(tree(warm, LEG, rest("mince"))).forCarcass(kilograms("22", Basis.COLD)));
        assertEquals(List.of("Give the weight warm."), found.help());
    }

    @Test
    void a_live_weight_is_dressed_and_then_chilled() {
        BasisStep dressing = new BasisStep(Basis.LIVE, Basis.WARM, Sheet.name("dressing"), Sheet.expected("52 ± 2"));
        ExpectedYields yields = Yields.of(hogget(List.of(chill("2 ± 0.4"), dressing), LEG, rest("mince")))
                .forCarcass(kilograms("46", Basis.LIVE))
                .orElseThrow();
        assertEquals(
                List.of("carcass, live", "dressing", "carcass, warm", "chill shrink", "carcass, cold", "leg", "rest"),
                yields.rows().stream().map(YieldRow::name).toList());
        assertEquals(
                46 * 0.48 * 0.98, yields.carcass().allPieces().orElseThrow().mean(), 1e-12);
        assertEquals(
                46,
                yields.total(Outcome.LOSS).mean()
                        + yields.total(Outcome.SALEABLE).mean(),
                46e-12);
        assertEquals(sd(yields.total(Outcome.SALEABLE)), sd(yields.total(Outcome.LOSS)), 1e-12);
    }

    @Test
    void the_band_is_held_against_the_weight_after_shrink() {
        assertTrue(Yields.of(CHILLED)
                .forCarcass(kilograms("24.4", Basis.WARM))
                .diagnostics()
                .isEmpty());
        Diagnostic found = only(Yields.of(CHILLED).forCarcass(kilograms("25", Basis.WARM)));
        assertEquals(List.of("25 kg warm is expected to be 24.5000 kg cold."), found.notes());
    }

    @Test
    void a_typical_carcass_is_the_middle_of_the_band() {
        ExpectedYields yields = Yields.of(HOGGET).forTypicalCarcass().orElseThrow();
        assertEquals(0, yields.given().mass().compareTo(Quantity.of("22", Unit.KILOGRAM)));
    }

    @Test
    void without_a_band_there_is_no_typical_carcass() {
        CutTree bandless = tree(cold(new WeightBand.NotStated()), LEG, rest("mince"));
        assertEquals(
                YieldCode.NO_BAND, only(Yields.of(bandless).forTypicalCarcass()).code());
        assertTrue(Yields.of(bandless)
                .forCarcass(kilograms("47.4", Basis.COLD))
                .diagnostics()
                .isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-3", "-1E-9999"})
    void a_carcass_weighs_more_than_nothing(String weight) {
        Diagnostic found = only(Yields.of(HOGGET).forCarcass(kilograms(weight, Basis.COLD)));
        assertEquals(YieldCode.CARCASS_WEIGHT_NOT_POSITIVE, found.code());
        assertTrue(found.message().length() < 100);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1E+9999", "1E-9999", "100001"})
    void a_weight_that_no_carcass_has_is_refused(String weight) {
        Diagnostic found = only(Yields.of(HOGGET).forCarcass(kilograms(weight, Basis.COLD)));
        assertEquals(YieldCode.WEIGHT_OUT_OF_REACH, found.code());
        assertTrue(found.message().length() < 120);
    }

    @Test
    void a_length_is_no_carcass_weight() {
        Quantity length = Quantity.of("22", Unit.MILLIMETRE);
        assertThrows(IllegalArgumentException.class, () -> new CarcassWeight(length, Basis.COLD));
    }

    @Test
    void shares_that_do_not_close_are_refused() {
        CutTree open = hogget(pair("leg", "33"), pair("loin", "20"));
        assertThrows(IllegalArgumentException.class, () -> Yields.of(open));
    }
}
