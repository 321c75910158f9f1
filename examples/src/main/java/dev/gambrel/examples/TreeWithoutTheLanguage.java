package dev.gambrel.examples;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.rules.TreeRules;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.Yields;
import java.util.List;
import java.util.Locale;

/** A tree that a program makes by itself, held against the rules, and what two legs of it give. */
public final class TreeWithoutTheLanguage {
    private TreeWithoutTheLanguage() {}

    /**
     * Prints what is wrong with the tree, if anything, and the weight of its products.
     *
     * @param args none
     */
    public static void main(String[] args) {
        CutTree tree = tree();
        TreeRules.check(tree).forEach(finding -> System.out.println(finding.message()));
        CarcassWeight carcass = new CarcassWeight(Quantity.of("22", Unit.KILOGRAM), Basis.COLD);
        double legs =
                Yields.of(tree).forCarcass(carcass).orElseThrow().products().mean();
        System.out.printf(Locale.ROOT, "both legs: %.2f kg\n", legs);
    }

    static CutTree tree() {
        Quantity mean = Quantity.of("33", Unit.PERCENT);
        Share share = new Share.Stated(new Expected.PlusMinus(mean, Quantity.of("0.9", Unit.PERCENT)));
        TradeName name = TradeName.of("leg");
        Part leg = new Cut(name, PieceCount.TWO, share, Description.NONE, List.of(), new Home.Product(), List.of());
        TradeName rest = TradeName.of("to be cut");
        return new CutTree(
                new Specification("Marram legs", 1),
                new Carcass(Basis.COLD, List.of(), new WeightBand.NotStated(), List.of()),
                Species.unknown(TradeName.of("sheep")),
                List.of(new Stream(rest, Stream.Kind.SALEABLE, new Stream.Lean.NotStated())),
                List.of(),
                List.of(leg, new Part.Rest(new Home.ToStream(rest))),
                List.of());
    }
}
