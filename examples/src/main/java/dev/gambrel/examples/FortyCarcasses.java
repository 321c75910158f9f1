package dev.gambrel.examples;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.yields.CarcassLot;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.Doubt;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.figure.CombinedEstimate;
import dev.gambrel.yields.figure.CombinedFigures;
import dev.gambrel.yields.figure.Spread;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** What forty carcasses sell as and are worth, how far both stray, and how they vary together. */
public final class FortyCarcasses {
    private FortyCarcasses() {}

    /**
     * Prints weight and value of the products of forty carcasses of 22 kg, cut by shares from twelve cutting tests.
     *
     * @param args one: the specification, such as {@code marram/hogget.cuts}
     */
    public static void main(String[] args) {
        System.out.print(report(
                new SpecCompiler().compile(Path.of(args[0])).orElseThrow().tree()));
    }

    static String report(CutTree tree) {
        CarcassWeight each = new CarcassWeight(Quantity.of("22", Unit.KILOGRAM), Basis.COLD);
        CombinedFigures figures = Yields.of(tree)
                .forCarcasses(CarcassLot.alike(40, each), Doubt.fromTests(12))
                .orElseThrow()
                .figures(List.of(row -> isProduct(row) ? 1 : 0, FortyCarcasses::price));
        return line("products, kg", figures.figure(0))
                + line("their value", figures.figure(1))
                + figure(
                        "correlation of the two",
                        figures.whole().correlation(0, 1).orElse(Double.NaN))
                + figure(
                        "value of a kilogram",
                        figures.whole().ratio(1, 0).estimate().mean());
    }

    private static boolean isProduct(YieldRow row) {
        return row.home().filter(home -> home instanceof Home.Product).isPresent();
    }

    /** Invented prices: whatever comes from the leg at one, other products at another, nothing for the rest. */
    private static double price(YieldRow row) {
        boolean ofLeg = row.path().toString().startsWith("leg /");
        return isProduct(row) ? ofLeg ? 14.5 : 9.8 : 0;
    }

    private static String line(String what, CombinedEstimate figure) {
        return String.format(
                Locale.ROOT,
                "%s: %.1f, between carcasses %s, doubt %s\n",
                what,
                figure.mean(),
                shown(figure.between()),
                shown(figure.doubt()));
    }

    private static String figure(String what, double figure) {
        return String.format(Locale.ROOT, "%s: %.2f\n", what, figure);
    }

    private static String shown(Spread spread) {
        return spread instanceof Spread.Stated stated
                ? String.format(Locale.ROOT, "± %.2f", stated.standardDeviation())
                : "not stated";
    }
}
