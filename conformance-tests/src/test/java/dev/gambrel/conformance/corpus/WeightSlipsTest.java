package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassLot;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.Doubt;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.working.Working;
import java.util.List;
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

    @Test
    void carcasses_that_are_worked_by_their_weight_are_not_told_together() {
        CutTree tree = sheet(Sheets.hogget("""
                cut leg 33 %, two per carcass {
                  worked as steaks, when the carcass is over 22 kg
                  worked as joint, when the carcass is at most 22 kg
                }
                rest -> mince
                """));
        var found = Yields.of(tree)
                .forCarcasses(CarcassLot.weighed(List.of(cold("24"), cold("21"))), Doubt.NOT_SAID)
                .diagnostics();
        assertEquals("G1006", Corpus.codes(found));
        Corpus.hold(Corpus.report(found), Corpus.folder("weights").resolve("carcasses_worked_apart.expected"));
    }

    @Test
    void no_weights_follow_from_what_a_buyer_asks() {
        CutTree asked = sheet("""
                language 1
                use "catalogue:sheep"
                requirement "Legs for Harbour Table" revision 1 for sheep
                cut leg, boneless
                """);
        var found = Yields.of(asked).forCarcass(cold("22")).diagnostics();
        assertEquals("G1007", Corpus.codes(found));
        assertEquals(found, BatchPlan.of(asked, Working.AS_WRITTEN, Basis.COLD).diagnostics());
        Corpus.hold(Corpus.report(found), Corpus.folder("weights").resolve("requirement.expected"));
    }

    private static CarcassWeight cold(String kilograms) {
        return new CarcassWeight(Quantity.of(kilograms, Unit.KILOGRAM), Basis.COLD);
    }

    private static CutTree tree(String band) {
        return sheet(
                Sheets.hogget("cut leg 33 %, two per carcass\nrest -> mince\n").replace("20 kg to 24 kg", band));
    }

    private static CutTree sheet(String sheet) {
        var text = new SourceText("hogget.cuts", sheet);
        return new SpecCompiler().compile(text, Sources.none()).orElseThrow().tree();
    }
}
