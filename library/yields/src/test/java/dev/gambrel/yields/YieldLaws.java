package dev.gambrel.yields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class YieldLaws {
    @Provide
    Arbitrary<CutTree> anySheets() {
        return RandomSheets.anySheets();
    }

    @Provide
    Arbitrary<CutTree> withEverySpread() {
        return RandomSheets.withEverySpread();
    }

    @Property(tries = 300)
    void what_leaves_a_cut_is_what_entered_it(@ForAll("anySheets") CutTree tree) {
        for (YieldRow row : Sheet.yields(tree, "22").rows()) {
            double left = row.parts().stream()
                    .mapToDouble(part -> part.allPieces().orElseThrow().mean())
                    .sum();
            double entered = row.allPieces().orElseThrow().mean();
            assertEquals(row.isEnd() ? 0 : entered, left, 1e-12 * entered);
        }
    }

    @Property(tries = 300)
    void outcomes_are_together_the_weight_given(@ForAll("anySheets") CutTree tree) {
        ExpectedYields yields = Sheet.yields(tree, "22");
        double sum = Arrays.stream(Outcome.values())
                .mapToDouble(outcome -> yields.total(outcome).mean())
                .sum();
        double streams = yields.streams().stream()
                .mapToDouble(stream -> stream.weight().mean())
                .sum();
        assertEquals(22, sum, 22e-12);
        assertEquals(
                22,
                streams + yields.products().mean() + yields.total(Outcome.LOSS).mean(),
                22e-12);
        Estimate all = yields.figure(row -> row.isEnd() ? 1 : 0);
        assertEquals(22, all.mean(), 22e-12);
        assertEquals(Spread.NONE, all.spread());
    }

    @Property(tries = 200)
    void a_carcass_twice_as_heavy_gives_twice_of_everything(@ForAll("anySheets") CutTree tree) {
        ExpectedYields light = Sheet.yields(tree, "11");
        ExpectedYields heavy = Sheet.yields(tree, "22");
        for (int i = 0; i < light.rows().size(); i++) {
            assertTwice(
                    light.rows().get(i).allPieces().orElseThrow(),
                    heavy.rows().get(i).allPieces().orElseThrow());
        }
        for (Outcome outcome : Outcome.values()) {
            assertTwice(light.total(outcome), heavy.total(outcome));
        }
    }

    private static void assertTwice(Estimate light, Estimate heavy) {
        assertEquals(2 * light.mean(), heavy.mean(), 1e-12 * heavy.mean());
        assertEquals(light.spread() == Spread.NOT_STATED, heavy.spread() == Spread.NOT_STATED);
        if (light.spread() instanceof Spread.Stated s) {
            assertEquals(2 * s.standardDeviation(), Sheet.sd(heavy), 1e-12 * heavy.mean());
        }
    }

    @Property(tries = 200)
    void a_line_alone_is_a_linear_figure_of_the_same_mean_and_spread(@ForAll("withEverySpread") CutTree tree) {
        ExpectedYields yields = Sheet.yields(tree, "22");
        for (YieldRow line : yields.rows()) {
            Estimate alone = yields.figure(row -> row.path().equals(line.path()) && row.kind() == line.kind() ? 1 : 0);
            Estimate weight = line.allPieces().orElseThrow();
            assertEquals(weight.mean(), alone.mean(), 1e-12 * 22);
            assertEquals(Sheet.sd(weight), Sheet.sd(alone), 1e-10 * 22);
        }
    }

    @Property(tries = 300)
    void a_stated_spread_of_a_line_is_never_lost_by_the_figure_of_it(@ForAll("anySheets") CutTree tree) {
        ExpectedYields yields = Sheet.yields(tree, "22");
        for (YieldRow line : yields.rows()) {
            Estimate alone = yields.figure(row -> row.path().equals(line.path()) && row.kind() == line.kind() ? 1 : 0);
            Spread spread = line.allPieces().orElseThrow().spread();
            assertTrue(spread == Spread.NOT_STATED || alone.spread() instanceof Spread.Stated, line.path()::toString);
        }
    }

    @Property(tries = 300)
    void two_figures_and_their_sum_agree_on_how_they_vary_together(
            @ForAll("withEverySpread") CutTree tree,
            @ForAll @Size(7) List<@DoubleRange(min = -5, max = 5) Double> prices,
            @ForAll @Size(5) List<@DoubleRange(min = -5, max = 5) Double> labour) {
        ExpectedYields yields = Sheet.yields(tree, "22");
        ToDoubleFunction<YieldRow> one = priced(prices);
        ToDoubleFunction<YieldRow> other = priced(labour);
        double x = yields.figure(one).spread().variance();
        double y = yields.figure(other).spread().variance();
        double sum = yields.figure(row -> one.applyAsDouble(row) + other.applyAsDouble(row))
                .spread()
                .variance();
        double together = yields.covariance(one, other).orElseThrow();
        double scale = 1e-9 * (x + y) + 1e-12;
        assertEquals(sum, x + y + 2 * together, scale);
        assertEquals(together, yields.covariance(other, one).orElseThrow(), scale);
        assertTrue(Math.abs(together) <= Math.sqrt(x * y) + scale, () -> together + " of " + x + " and " + y);
    }

    private static ToDoubleFunction<YieldRow> priced(List<Double> prices) {
        return row -> row.isEnd() ? prices.get(row.path().toString().length() % prices.size()) : 0;
    }
}
