package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.Yields;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A weight that does not go with the specification, for hogget of 20 kg to 24 kg cold, is told as expected. */
class WeightSlipsTest {
    @ParameterizedTest
    @CsvSource({
        "warm_weight_for_a_cold_carcass, 23, KILOGRAM, WARM, G1001",
        "pounds_in_the_kilogram_column, 47.4, KILOGRAM, COLD, G1002",
        "kilograms_in_the_pound_column, 22, POUND, COLD, G1002",
        "hogget_too_light, 18, KILOGRAM, COLD, G1002",
        "carcass_of_nothing, 0, KILOGRAM, COLD, G1004",
        "point_lost, 2240000, KILOGRAM, COLD, G1005"
    })
    void a_weight_that_does_not_fit_is_told_as_expected(
            String name, String amount, Unit unit, Basis basis, String code) {
        var weight = new CarcassWeight(Quantity.of(amount, unit), basis);
        var found = Yields.of(tree("20 kg to 24 kg")).forCarcass(weight).diagnostics();
        assertEquals(code, Corpus.codes(found));
        Corpus.hold(Corpus.report(found), Corpus.folder("weights").resolve(name + ".expected"));
    }

    @Test
    void without_a_band_there_is_no_typical_carcass() {
        var found = Yields.of(tree("skin off")).forTypicalCarcass().diagnostics();
        assertEquals("G1003", Corpus.codes(found));
        Corpus.hold(Corpus.report(found), Corpus.folder("weights").resolve("no_band.expected"));
    }

    private static CutTree tree(String band) {
        String sheet =
                Sheets.hogget("cut leg 33 %, two per carcass\nrest -> mince\n").replace("20 kg to 24 kg", band);
        var text = new SourceText("hogget.cuts", sheet);
        return new SpecCompiler().compile(text, Sources.none()).orElseThrow().tree();
    }
}
