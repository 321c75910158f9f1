package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.estimate.Measurements;
import dev.gambrel.yields.table.YieldTable;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A reading that does not go with the specification is told as expected. */
class ReadingSlipsTest {
    private static final CarcassWeight WEIGHT = new CarcassWeight(Quantity.of("22", Unit.KILOGRAM), Basis.COLD);

    @ParameterizedTest
    @EnumSource(ReadingSlip.class)
    void a_reading_that_does_not_fit_is_told_as_expected(ReadingSlip slip) {
        String lines = slip == ReadingSlip.EYE_DEPTH_LEFT_OUT ? held() : ratio();
        List<Diagnostic> found =
                Yields.of(tree(lines)).forCarcass(WEIGHT, slip.given()).diagnostics();
        assertTrue(Corpus.codes(found).contains(slip.code()), Corpus.codes(found));
        Corpus.hold(Corpus.report(found), Corpus.folder("readings").resolve(slip.fileName()));
    }

    @Test
    void sound_readings_give_the_expected_table() {
        var given = Measurements.NONE
                .with(dev.gambrel.text.TradeName.of("back fat"), Quantity.of("0.25", Unit.INCH))
                .with(dev.gambrel.text.TradeName.of("eye depth"), Quantity.of("28", Unit.MILLIMETRE));
        var result = Yields.of(tree(ratio())).forCarcass(WEIGHT, given);
        assertEquals("", Corpus.codes(result.diagnostics()));
        String table = YieldTable.of(result.orElseThrow(), Unit.KILOGRAM, 3).text();
        Corpus.hold(table, Corpus.folder("readings").resolve("sound_readings.expected"));
    }

    private static String ratio() {
        return "estimate legs = 36 % - 2 % × back fat / eye depth - 0.4 % per mm × back fat, ± 0.9 %,"
                + " for eye depth 0 mm to 40 mm\n";
    }

    private static String held() {
        return "estimate legs = 36 % - 0.4 % per mm × back fat, ± 0.9 %, for eye depth 10 mm to 40 mm\n";
    }

    private static CutTree tree(String estimate) {
        String sheet = Sheets.hogget("measure back fat, in mm, \"over the 12th rib\", 1 mm to 15 mm\n"
                + "measure eye depth, in mm\nmeasure muscling, 1 = thin, 2 = average, 3 = thick\n" + estimate
                + "cut leg, estimated by legs, two per carcass\nrest -> mince\n");
        var text = new SourceText("hogget.cuts", sheet);
        return new SpecCompiler().compile(text, Sources.none()).orElseThrow().tree();
    }
}
