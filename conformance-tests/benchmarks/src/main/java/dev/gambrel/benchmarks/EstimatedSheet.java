package dev.gambrel.benchmarks;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.estimate.Measurements;

/** The sheet of {@link SpecText} with three joints whose shares follow from the back fat, the equations invented. */
final class EstimatedSheet {
    static final int REST = 1;
    static final int LEG = 3;
    static final int LOIN = 4;
    static final int SHOULDER = 5;

    private static final String EQUATIONS = """
            measure back fat, in mm, 2 mm to 15 mm
            estimate legs = 21.5 % - 0.15 % per mm × back fat, ± 0.9 %, source house tests
            estimate loins = 18.8 % + 0.10 % per mm × back fat, ± 0.9 %, source house tests
            estimate shoulders = 20.0 % - 0.05 % per mm × back fat, ± 0.9 %, source house tests

            """;

    private static final String WRITTEN = ", two per carcass, 19.5 % ± 0.9 %, bone in, source house tests";

    private EstimatedSheet() {}

    /** The sheet of so many parts, in words. */
    static String text(int parts) {
        return SpecText.of(parts)
                .replaceFirst("remove spinal cord", EQUATIONS + "remove spinal cord")
                .replaceFirst("remove channel fat .*\\n", "rest -> render\n")
                .replaceFirst("cut leg" + WRITTEN, "cut leg, two per carcass, estimated by legs, bone in")
                .replaceFirst("cut loin" + WRITTEN, "cut loin, two per carcass, estimated by loins, bone in")
                .replaceFirst(
                        "cut shoulder" + WRITTEN, "cut shoulder, two per carcass, estimated by shoulders, bone in");
    }

    /**
     * The sheet.
     *
     * @param parts how many cuts, bones, trims, losses and rests
     * @return its tree
     * @throws IllegalStateException if the specification leads to any error
     */
    static CutTree of(int parts) {
        Result<Compilation> result =
                new SpecCompiler().compile(new SourceText("sheet.cuts", text(parts)), Sources.none());
        return result.value()
                .orElseThrow(() -> new IllegalStateException("not a sound specification: " + result.diagnostics()))
                .tree();
    }

    /** The same laid out flat; the shares of the three joints, and what is left, are those of one carcass. */
    static FlatSheet flat(int parts) {
        Measurements measured = Measurements.NONE.with(TradeName.of("back fat"), Quantity.of("8", Unit.MILLIMETRE));
        return FlatSheet.of(Yields.of(of(parts)).forTypicalCarcass(measured).orElseThrow());
    }
}
