package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.bone;
import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.sd;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.tree.Basis;
import dev.gambrel.yields.figure.Estimate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OutcomeTest {
    private static final ExpectedYields YIELDS = yields(
            hogget(
                    cut("leg", "40 ± 1", trim("fat", "5 ± 1", "mince"), loss("drip", "1 ± 0.2")),
                    bone("neck bones", "10 ± 0.5", "bones"),
                    trim("glands", "1 ± 0.1", "waste"),
                    loss("saw", "0.5 ± 0.1"),
                    rest("mince")),
            "20");

    private static double stream(String name) {
        return YIELDS.streams().stream()
                .filter(s -> s.stream().name().equals(Sheet.name(name)))
                .findFirst()
                .orElseThrow()
                .weight()
                .mean();
    }

    @Test
    void every_gram_has_one_outcome() {
        assertEquals(20 * 0.40 * 0.94, YIELDS.products().mean(), 1e-12);
        assertEquals(20 * (0.40 * 0.05 + 0.485), stream("mince"), 1e-12);
        assertEquals(0, stream("diced"));
        assertEquals(2, YIELDS.total(Outcome.BY_PRODUCT).mean(), 1e-12);
        assertEquals(0.2, YIELDS.total(Outcome.WASTE).mean(), 1e-12);
        assertEquals(20 * (0.40 * 0.01 + 0.005), YIELDS.total(Outcome.LOSS).mean(), 1e-12);
        assertEquals(
                YIELDS.products().mean() + stream("mince"),
                YIELDS.total(Outcome.SALEABLE).mean(),
                1e-12);
        assertEquals(0, YIELDS.total(Outcome.NOT_STATED).mean());
    }

    /** By hand, from the moments of a product: what the leg gains the rest loses, so the two minces pull against each other. */
    @Test
    void mince_from_two_places_counts_the_pull_between_them() {
        double throughLeg = Math.pow((0.05 - 1) * 0.01, 2);
        double others = 0.005 * 0.005 + 0.001 * 0.001 + 0.001 * 0.001;
        double trimming = (0.40 * 0.40 + 0.01 * 0.01) * 0.01 * 0.01;
        Estimate mince = YIELDS.streams().get(1).weight();
        assertEquals(20 * Math.sqrt(throughLeg + others + trimming), sd(mince), 1e-12);
    }

    @Test
    void weight_sent_to_a_stream_that_nobody_declared_has_no_home() {
        ExpectedYields yields = yields(hogget(trim("fat", "10", "render"), rest("mince")), "20");
        assertEquals(2, yields.total(Outcome.NOT_STATED).mean(), 1e-12);
    }

    @Test
    void one_plan_serves_many_threads() {
        Yields yields = Yields.of(Sheet.deer());
        IntStream.rangeClosed(1, 500).parallel().forEach(kilograms -> {
            ExpectedYields one = yields.forCarcass(Sheet.kilograms(Integer.toString(kilograms), Basis.COLD))
                    .orElseThrow();
            assertEquals(
                    kilograms * 0.395,
                    Sheet.row(one, "haunch").allPieces().orElseThrow().mean(),
                    1e-9);
        });
    }
}
