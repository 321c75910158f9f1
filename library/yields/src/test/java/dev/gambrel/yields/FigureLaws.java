package dev.gambrel.yields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.figure.CombinedEstimate;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.figure.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds of linear figures, of one carcass and of several, over any sheet. */
class FigureLaws {
    private static final int FIGURES = 4;

    @Provide
    Arbitrary<CutTree> anySheets() {
        return RandomSheets.anySheets();
    }

    @Provide
    Arbitrary<CutTree> withEverySpread() {
        return RandomSheets.withEverySpread();
    }

    /** Prices of the ends, each figure its own; the last is a sum of the first two. */
    private static List<ToDoubleFunction<YieldRow>> prices(long seed) {
        List<ToDoubleFunction<YieldRow>> figures = new ArrayList<>();
        for (int f = 0; f < FIGURES - 1; f++) {
            long own = seed + 31L * f;
            figures.add(row ->
                    row.isEnd() ? new Random(own ^ row.path().toString().hashCode()).nextDouble() * 10 - 3 : 0);
        }
        figures.add(row -> figures.get(0).applyAsDouble(row) + figures.get(1).applyAsDouble(row));
        return figures;
    }

    @Property(tries = 200)
    void no_sum_of_figures_strays_by_less_than_nothing(@ForAll("withEverySpread") CutTree tree, @ForAll long seed) {
        JointEstimate figures = Sheet.yields(tree, "22").figures(prices(seed));
        assertPositiveSemidefinite(figures, new Random(seed));
        assertPositiveSemidefinite(figures.timesIndependent(new Estimate(1, new Spread.Stated(0.1))), new Random(seed));
    }

    @Property(tries = 100)
    void no_sum_of_figures_of_several_carcasses_strays_by_less_than_nothing(
            @ForAll("withEverySpread") CutTree tree,
            @ForAll @IntRange(min = 1, max = 100) int tests,
            @ForAll long seed) {
        var figures = alike(tree, 7, Doubt.fromTests(tests)).figures(prices(seed));
        assertPositiveSemidefinite(figures.between(), new Random(seed));
        assertPositiveSemidefinite(figures.doubt(), new Random(seed));
        assertPositiveSemidefinite(figures.whole(), new Random(seed));
    }

    /** A symmetric matrix is positive semi-definite as all w'Cw are 0 or more. */
    private static void assertPositiveSemidefinite(JointEstimate figures, Random random) {
        double size = 0;
        for (int i = 0; i < FIGURES; i++) {
            size += figures.covariance(i, i).orElseThrow();
        }
        for (int trial = 0; trial < 20; trial++) {
            double[] w = random.doubles(FIGURES, -1, 1).toArray();
            double form = 0;
            for (int i = 0; i < FIGURES; i++) {
                for (int j = 0; j < FIGURES; j++) {
                    form += w[i] * w[j] * figures.covariance(i, j).orElseThrow();
                }
            }
            assertTrue(form >= -1e-12 * size, form + " of " + size);
        }
        double difference = figures.combination(1, 1, 0, -1).spread().variance();
        assertEquals(0, difference, 1e-12 * size);
    }

    @Property(tries = 200)
    void figures_at_once_are_the_figures_one_by_one(@ForAll("anySheets") CutTree tree, @ForAll long seed) {
        ExpectedYields yields = Sheet.yields(tree, "22");
        List<ToDoubleFunction<YieldRow>> prices = prices(seed);
        JointEstimate figures = yields.figures(prices);
        for (int f = 0; f < FIGURES; f++) {
            Estimate alone = yields.figure(prices.get(f));
            assertEquals(alone.mean(), figures.mean(f));
            assertSame(alone.spread().variance(), figures.figure(f).spread().variance());
        }
    }

    /** Equal up to rounding, and open together. */
    private static void assertSame(double expected, double found) {
        double rounding = Double.isNaN(expected) ? 0 : 1e-12 * Math.abs(expected) + 1e-15;
        assertEquals(expected, found, rounding);
    }

    @Property(tries = 200)
    void a_sum_taken_of_the_lines_is_the_sum_taken_of_the_figures(
            @ForAll("withEverySpread") CutTree tree,
            @ForAll long seed,
            @ForAll @DoubleRange(min = -5, max = 5) double a,
            @ForAll @DoubleRange(min = -5, max = 5) double b) {
        ExpectedYields yields = Sheet.yields(tree, "22");
        List<ToDoubleFunction<YieldRow>> prices = prices(seed);
        Estimate ofLines = yields.figure(
                row -> a * prices.get(0).applyAsDouble(row) + b * prices.get(2).applyAsDouble(row));
        JointEstimate figures = yields.figures(prices);
        Estimate ofFigures = figures.combination(a, 0, b, 0);
        double size = a * a * figures.figure(0).spread().variance()
                + b * b * figures.figure(2).spread().variance();
        assertEquals(ofLines.mean(), ofFigures.mean(), 1e-11 * 22 * 100);
        assertEquals(ofLines.spread().variance(), ofFigures.spread().variance(), 1e-12 + 1e-10 * size);
    }

    @Property(tries = 200)
    void nothing_is_gained_or_lost_in_any_figure(@ForAll("anySheets") CutTree tree) {
        ExpectedYields yields = Sheet.yields(tree, "22");
        List<ToDoubleFunction<YieldRow>> ends = new ArrayList<>();
        for (YieldRow end : yields.rows().stream().filter(YieldRow::isEnd).toList()) {
            ends.add(row -> row.index() == end.index() ? 1 : 0);
        }
        JointEstimate all = yields.figures(ends);
        double sum = 0;
        for (int i = 0; i < all.size(); i++) {
            sum += all.mean(i);
        }
        assertEquals(22, sum, 22e-12);
        CombinedEstimate whole = alike(tree, 40, Doubt.NOT_SAID).figure(row -> row.isEnd() ? 1 : 0);
        assertEquals(800, whole.mean(), 800e-12);
        assertEquals(Spread.NONE, whole.between());
        assertEquals(Spread.NONE, whole.doubt());
    }

    @Property(tries = 100)
    void a_carcass_three_times_as_heavy_gives_three_times_every_mean_and_spread(
            @ForAll("withEverySpread") CutTree tree, @ForAll long seed) {
        JointEstimate light = Sheet.yields(tree, "11").figures(prices(seed));
        JointEstimate heavy = Sheet.yields(tree, "33").figures(prices(seed));
        for (int i = 0; i < FIGURES; i++) {
            assertEquals(3 * light.mean(i), heavy.mean(i), 1e-12 * Math.abs(heavy.mean(i)));
            for (int j = 0; j < FIGURES; j++) {
                double together = light.covariance(i, j).orElseThrow();
                assertEquals(
                        9 * together, heavy.covariance(i, j).orElseThrow(), 1e-12 * Math.abs(9 * together) + 1e-15);
            }
        }
    }

    @Property(tries = 100)
    void one_carcass_whose_means_are_known_is_a_carcass(@ForAll("anySheets") CutTree tree, @ForAll long seed) {
        JointEstimate one = Sheet.yields(tree, "20").figures(prices(seed));
        JointEstimate all = alike(tree, 1, Doubt.NONE).figures(prices(seed)).whole();
        for (int i = 0; i < FIGURES; i++) {
            assertEquals(one.mean(i), all.mean(i), 1e-12 * Math.abs(one.mean(i)));
            for (int j = 0; j < FIGURES; j++) {
                assertSame(
                        one.covariance(i, j).orElse(Double.NaN),
                        all.covariance(i, j).orElse(Double.NaN));
            }
        }
    }

    @Property(tries = 100)
    void a_batch_strays_for_its_mean_by_the_root_of_its_number_less_until_doubt_is_left(
            @ForAll("withEverySpread") CutTree tree,
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 10_000) int number,
            @ForAll @IntRange(min = 1, max = 50) int tests) {
        ToDoubleFunction<YieldRow> price = prices(seed).get(0);
        double one = alike(tree, 1, Doubt.NONE).figure(price).between().variance();
        double all = alike(tree, number, Doubt.NONE).figure(price).between().variance();
        assertEquals(one / number, all / number / number, 1e-12 * one / number + 1e-18);
        double doubt =
                alike(tree, 1, Doubt.fromTests(tests)).figure(price).doubt().variance();
        double ofAll = alike(tree, number, Doubt.fromTests(tests))
                .figure(price)
                .doubt()
                .variance();
        assertEquals(doubt, ofAll / number / number, 1e-12 * doubt + 1e-18);
    }

    private static CombinedYields alike(CutTree tree, int number, Doubt doubt) {
        return Yields.of(tree)
                .forCarcasses(CarcassLot.alike(number, Sheet.kilograms("20", Basis.COLD)), doubt)
                .orElseThrow();
    }
}
