package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.bone;
import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.plan.Kind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler.NormalizedGaussian;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** The exact moments against draws of normal shares (JCGM 101, propagation of distributions by Monte Carlo). */
class MonteCarloTest {
    private static final CutTree TREE = hogget(
            pair(
                    "leg",
                    "33 ± 1.5",
                    cut("topside", "30 ± 3", trim("fat", "8 ± 2", "mince"), loss("drip", "2 ± 1")),
                    bone("femur", "15 ± 2", "bones"),
                    cut("silverside", "25 ± 2.5"),
                    rest("mince")),
            pair(
                    "shoulder",
                    "40 ± 2",
                    cut("blade", "60 ± 4"),
                    bone("shank", "25 ± 3", "bones"),
                    cut("neck end", "15 ± 2")),
            trim("flap fat", "7 ± 2.5", "waste"),
            cut("saddle", "20 ± 1"));

    private static final ToDoubleFunction<YieldRow> SALEABLE = row -> row.home()
            .map(h -> h instanceof Home.Product || h.equals(Sheet.to("mince")) ? 1.0 : 0.0)
            .orElse(0.0);
    private static final ToDoubleFunction<YieldRow> MINCE =
            row -> row.home().equals(Optional.of(Sheet.to("mince"))) ? 1 : 0;
    private static final ToDoubleFunction<YieldRow> VALUE =
            row -> row.isEnd() ? row.name().length() : 0;
    private static final ToDoubleFunction<YieldRow> BONES = row -> row.kind() == Kind.BONE ? 1 : 0;
    private static final List<ToDoubleFunction<YieldRow>> FIGURES = List.of(SALEABLE, MINCE, VALUE, BONES);

    private final NormalizedGaussian normal =
            NormalizedGaussian.of(RandomSource.XO_RO_SHI_RO_128_PP.create(20_260_101L));

    private static double[] times(double weight, double[] figures) {
        return Arrays.stream(figures).map(figure -> weight * figure).toArray();
    }

    @Test
    void saleable_weight_mince_value_and_bones_agree_with_draws_and_so_does_how_they_vary_together() {
        ExpectedYields yields = yields(TREE, "20");
        DrawnTree tree = DrawnTree.of(yields.weighed(), FIGURES);
        DrawnFigures.assertAgree(yields.figures(FIGURES), 200_000, () -> times(20, tree.draw(normal, FIGURES.size())));
    }

    @Test
    void figures_of_a_carcass_of_uncertain_weight_agree_with_draws() {
        ExpectedYields yields = yields(TREE, "1");
        DrawnTree tree = DrawnTree.of(yields.weighed(), FIGURES);
        JointEstimate exact = yields.figures(FIGURES).timesIndependent(new Estimate(22, new Spread.Stated(1.5)));
        DrawnFigures.assertAgree(
                exact, 200_000, () -> times(22 + 1.5 * normal.sample(), tree.draw(normal, FIGURES.size())));
    }

    /** The doubt is drawn once for all carcasses of a draw, what each strays by itself for each. */
    @Test
    void carcasses_cut_by_shares_from_three_tests_agree_with_draws() {
        List<CarcassWeight> weights = List.of(cold("18"), cold("22"), cold("24"), cold("21.5"), cold("20"));
        CombinedYields yields = Yields.of(TREE)
                .forCarcasses(CarcassLot.weighed(weights), Doubt.fromTests(3))
                .orElseThrow();
        DrawnTree tree = DrawnTree.of(yields.ofOne().weighed(), FIGURES);
        DrawnFigures.assertAgree(yields.figures(FIGURES).whole(), 100_000, () -> {
            DrawnTree doubted = tree.doubted(normal, 1 / Math.sqrt(3));
            double[] sum = new double[FIGURES.size()];
            for (CarcassWeight weight : weights) {
                double[] one = doubted.draw(normal, FIGURES.size());
                Arrays.setAll(sum, f -> sum[f] + weight.mass().value() * one[f]);
            }
            return sum;
        });
    }

    @Test
    void carcasses_of_uncertain_weight_agree_with_draws() {
        Expected each = new Expected.PlusMinus(Quantity.of("22", Unit.KILOGRAM), Quantity.of("1.5", Unit.KILOGRAM));
        CombinedYields yields = Yields.of(TREE)
                .forCarcasses(CarcassLot.expected(4, each, Basis.COLD), Doubt.fromTests(2))
                .orElseThrow();
        DrawnTree tree = DrawnTree.of(yields.ofOne().weighed(), FIGURES);
        DrawnFigures.assertAgree(yields.figures(FIGURES).whole(), 100_000, () -> {
            DrawnTree doubted = tree.doubted(normal, 1 / Math.sqrt(2));
            double[] sum = new double[FIGURES.size()];
            for (int carcass = 0; carcass < 4; carcass++) {
                double[] one = times(22 + 1.5 * normal.sample(), doubted.draw(normal, FIGURES.size()));
                Arrays.setAll(sum, f -> sum[f] + one[f]);
            }
            return sum;
        });
    }

    private static CarcassWeight cold(String kilograms) {
        return Sheet.kilograms(kilograms, Basis.COLD);
    }
}
