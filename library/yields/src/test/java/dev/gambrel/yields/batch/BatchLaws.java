package dev.gambrel.yields.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.RandomSheets;
import dev.gambrel.yields.Sheet;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.working.Working;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class BatchLaws {
    @Provide
    Arbitrary<CutTree> anySheets() {
        return RandomSheets.anySheets();
    }

    private static BatchPlan plan(CutTree tree) {
        return BatchPlan.of(tree, Working.AS_WRITTEN, Basis.COLD).orElseThrow();
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Property(tries = 200)
    void every_line_of_a_batch_is_that_of_the_carcass_by_itself(
            @ForAll("anySheets") CutTree tree,
            @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 0.01, max = 900) Double> kilograms) {
        BatchPlan plan = plan(tree);
        double[] weights = new double[kilograms.size() * plan.size()];
        plan.worker()
                .weights(
                        Carcasses.weighed(array(kilograms)),
                        0,
                        kilograms.size(),
                        new byte[kilograms.size()],
                        weights,
                        0);
        for (int i = 0; i < kilograms.size(); i++) {
            double weight = kilograms.get(i);
            ExpectedYields alone = Sheet.yields(tree, BigDecimal.valueOf(weight).toPlainString());
            Map<String, Double> rows = new HashMap<>();
            for (YieldRow row : alone.rows()) {
                row.allPieces().ifPresent(all -> rows.put(row.kind() + " " + row.path(), all.mean()));
            }
            for (int v = 0; v < plan.size(); v++) {
                double expected = rows.getOrDefault(
                        plan.node(v).kind() + " " + plan.node(v).path(), 0.0);
                assertEquals(expected, weights[i * plan.size() + v], 1e-12 * weight);
            }
        }
    }

    @Property(tries = 200)
    void sums_are_those_of_the_carcasses_by_themselves(
            @ForAll("anySheets") CutTree tree,
            @ForAll @Size(min = 2, max = 150) List<@DoubleRange(min = 1, max = 90) Double> kilograms) {
        BatchPlan plan = plan(tree);
        BatchSums sums = plan.sums();
        int n = kilograms.size();
        plan.worker().add(Carcasses.weighed(array(kilograms)), 0, n, new byte[n], sums);
        ExpectedYields one = Sheet.yields(tree, "1");
        double all = kilograms.stream().mapToDouble(d -> d).sum();
        double squares = kilograms.stream().mapToDouble(d -> d * d).sum();
        double outcomes = 0;
        for (int t = 0; t < Outcome.values().length; t++) {
            BatchFigure figure = sums.total(t);
            var alone = one.total(Outcome.values()[t]);
            assertEquals(alone.mean() * all, figure.sum(), 1e-12 * all);
            assertEquals(alone.mean() * all / n, figure.mean(), 1e-12 * all / n);
            assertEquals(alone.spread() == Spread.NOT_STATED, figure.expected() == Spread.NOT_STATED);
            if (figure.expected() instanceof Spread.Stated stated) {
                assertEquals(
                        Sheet.sd(alone) * Math.sqrt(squares), stated.standardDeviation(), 1e-10 * Math.sqrt(squares));
            }
            outcomes += figure.sum();
        }
        assertEquals(all, outcomes, 1e-12 * all);
        assertEquals(all, sums.line(0).sum(), 1e-12 * all);
        assertEquals(n, sums.carcasses());
    }

    @Property(tries = 100)
    void sums_are_the_same_however_the_carcasses_are_shared_out(
            @ForAll("anySheets") CutTree tree,
            @ForAll @IntRange(min = 1, max = 700) int n,
            @ForAll @IntRange(min = 1, max = 5) int blocks,
            @ForAll Random random) {
        BatchPlan plan = plan(tree);
        Carcasses carcasses = Carcasses.weighed(IntStream.range(0, n)
                .mapToDouble(i -> 10 + 20 * random.nextDouble())
                .toArray());
        BatchSums inOne = plan.sums();
        plan.worker().add(carcasses, 0, n, new byte[n], inOne);
        BatchSums together = plan.sums();
        int step = blocks * BatchWorker.BLOCK;
        for (int from = (n - 1) / step * step; from >= 0; from -= step) {
            BatchSums some = plan.sums();
            plan.worker().add(carcasses, from, Math.min(n, from + step), new byte[n], some);
            together.add(some);
        }
        for (int v = 0; v < plan.size(); v++) {
            assertEquals(inOne.line(v), together.line(v));
        }
    }

    @Property(tries = 100)
    void totals_of_a_carcass_are_what_its_ends_come_to(
            @ForAll("anySheets") CutTree tree, @ForAll @DoubleRange(min = 0.01, max = 900) double kilograms) {
        BatchPlan plan = plan(tree);
        double[] totals = new double[plan.totals().size()];
        double[] expected = new double[totals.length];
        plan.worker().totals(Carcasses.weighed(kilograms), 0, 1, new byte[1], totals, 0);
        ExpectedYields alone = Sheet.yields(tree, BigDecimal.valueOf(kilograms).toPlainString());
        for (int t = 0; t < totals.length; t++) {
            BatchTotal total = plan.totals().get(t);
            if (total instanceof BatchTotal.OfOutcome of) {
                expected[t] = alone.total(of.outcome()).mean();
            } else if (total instanceof BatchTotal.OfStream of) {
                expected[t] = alone.streams().stream()
                        .filter(s -> s.stream().equals(of.stream()))
                        .findFirst()
                        .orElseThrow()
                        .weight()
                        .mean();
            } else {
                expected[t] = alone.products().mean();
            }
        }
        assertArrayEquals(expected, totals, 1e-12 * kilograms);
    }
}
