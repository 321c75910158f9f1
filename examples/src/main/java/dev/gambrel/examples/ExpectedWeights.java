package dev.gambrel.examples;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Interval;
import java.util.List;
import java.util.Locale;

/** From a specification in words to three figures: expected weight, standard deviation and 95 % range. */
public final class ExpectedWeights {
    private static final String SPECIFICATION = """
            language 1
            use "catalogue:sheep"
            specification "Marram hogget topside" revision 1 for sheep
            carcass cold, 20 kg to 24 kg
            stream mince, saleable, lean 85 % visual
            cut leg, two per carcass, 33.0 % ± 0.9 % {
              cut topside 21.0 % ± 0.9 %, boneless
              rest -> mince
            }
            rest -> mince
            """;

    private ExpectedWeights() {}

    /**
     * Prints what both topsides of a cold carcass of 22 kg should weigh.
     *
     * @param args none
     */
    public static void main(String[] args) {
        CutTree tree = new SpecCompiler()
                .compile(new SourceText("topside.cuts", SPECIFICATION), Sources.none())
                .orElseThrow()
                .tree();
        System.out.print(topsides(tree, "22.0"));
    }

    static String topsides(CutTree tree, String kilograms) {
        CarcassWeight carcass = new CarcassWeight(Quantity.of(kilograms, Unit.KILOGRAM), Basis.COLD);
        TreePath topside = new TreePath(List.of(TradeName.of("leg"), TradeName.of("topside")));
        return Yields.of(tree)
                .forCarcass(carcass)
                .orElseThrow()
                .row(topside)
                .flatMap(row -> row.allPieces())
                .map(ExpectedWeights::shown)
                .orElse("This specification does not say what a topside weighs.\n");
    }

    private static String shown(Estimate weight) {
        String mean = String.format(Locale.ROOT, "both topsides: %.4f kg\n", weight.mean());
        return weight.weightRange95().map(range -> mean + spread(weight, range)).orElse(mean + "spread: not stated\n");
    }

    private static String spread(Estimate weight, Interval range) {
        double deviation = Math.sqrt(weight.spread().variance());
        return String.format(
                Locale.ROOT,
                "standard deviation: %.4f kg\n95 %% range: %.4f to %.4f kg\n",
                deviation,
                range.low(),
                range.high());
    }
}
