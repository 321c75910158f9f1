package dev.gambrel.blends;

import static dev.gambrel.blends.Trim.atMostFat;
import static dev.gambrel.blends.Trim.lean;
import static dev.gambrel.blends.Trim.of;
import static dev.gambrel.blends.Trim.straying;
import static dev.gambrel.blends.Trim.tubs;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Lean that is promised. The case, lean meat of 10 % fat ± 1.5 and trim of 50 % ± 3 to at most 20 % with 95 %, was worked out with
 * the chance constraint of Charnes and Cooper (1959) by bisection; without spread the square gives a quarter of trim.
 */
class PromiseTest {
    private static final Promise SURELY = new Promise.At(0.95);

    @Test
    void two_tubs_by_one_root() {
        double trim = PromisedSquare.mostOfFatter(lean(90, 1.5), lean(50, 3), 80, SURELY)
                .orElseThrow();
        assertEquals(0.194825316, trim, 1e-8);
        assertEquals(17.7930126, 10 + 40 * trim, 1e-6);
    }

    @Test
    void on_average_the_root_is_the_square() {
        assertEquals(
                0.25,
                PromisedSquare.mostOfFatter(lean(90, 1.5), lean(50, 3), 80, Promise.ON_AVERAGE)
                        .orElseThrow(),
                1e-12);
    }

    @Test
    void what_the_leaner_tub_alone_cannot_promise_two_may_since_they_do_not_stray_together() {
        assertEquals(OptionalDouble.empty(), PromisedSquare.mostOfFatter(lean(82, 3), lean(50, 1), 80, SURELY));
        assertTrue(PromisedSquare.mostOfFatter(lean(84, 3), lean(83, 3), 80, SURELY)
                .isPresent());
    }

    @Test
    void the_same_two_tubs_by_cutting_planes() {
        BatchOrder order = order(tubs(straying("lean", 10, 1.5, 5), straying("trim", 50, 3, 1)), 20);
        Blend blend = new LeastCost().of(order).orElseThrow().blend();
        assertEquals(19.4825316, of(blend, "trim"), 1e-5);
    }

    @Test
    void several_lots_that_stray_are_surer_than_one_and_keep_the_promise_just() {
        Tubs tubs = tubs(
                straying("lot 1", 10, 2, 5.00),
                straying("lot 2", 11, 2, 4.90),
                straying("lot 3", 12, 2, 4.85),
                straying("trim", 45, 4, 1.50),
                straying("flank", 30, 3, 3.00));
        Blend blend = new LeastCost().of(order(tubs, 20)).orElseThrow().blend();
        Estimate lean = blend.lean();
        double sd = ((Spread.Stated) lean.spread()).standardDeviation();
        assertEquals(80, lean.mean() - SURELY.deviations() * sd, 5e-6);
        assertTrue(blend.taken().size() > 2, blend.toString());
    }

    @Test
    void a_promise_of_very_many_lots_is_given_up_in_good_time() {
        Tub[] lots = IntStream.range(0, 1000)
                .mapToObj(i -> straying("lot " + i, 5 + i % 47, 1 + i % 5, 1 + i * 7919 % 1009 / 100.0))
                .toArray(Tub[]::new);
        BatchOrder order = order(tubs(lots), 20);
        assertTimeout(Duration.ofSeconds(20), () -> new LeastCost().of(order));
    }

    @Test
    void a_promise_that_is_too_much_says_how_much_can_be_promised() {
        BatchOrder order = order(tubs(straying("lean", 19, 1, 5), straying("trim", 30, 1, 1)), 18);
        BatchOrder reachable = order(tubs(straying("lean", 17, 1, 5), straying("trim", 60, 1, 1)), 16);
        assertEquals("G1902", only(order).code().id());
        assertEquals("G1902", only(reachable).code().id());
        Diagnostic found = only(order(tubs(straying("lean", 17, 1, 5), straying("trim", 60, 1, 1)), 17.5));
        assertEquals("G1907", found.code().id());
        assertEquals(
                "That the blend is at least 82.5 % lean, chemical cannot be promised at 95 %; the most that can be is at"
                        + " least 81.36 %.",
                found.message());
    }

    @Test
    void nothing_is_promised_of_lots_of_whose_lean_no_spread_is_stated() {
        Tubs tubs = tubs(straying("lean", 10, 1.5, 5), Trim.fat("trim", 50, 100, 1));
        Diagnostic found = only(order(tubs, 20));
        assertEquals(
                "How far the lean of trim strays is not stated, so nothing can be promised of a blend with it.",
                found.message());
    }

    private static BatchOrder order(Tubs tubs, double mostFat) {
        return new BatchOrder(tubs, atMostFat(mostFat), 100, List.of(), SURELY);
    }

    private static Diagnostic only(BatchOrder order) {
        List<Diagnostic> found = new LeastCost().of(order).diagnostics();
        assertEquals(1, found.size(), found.toString());
        return found.get(0);
    }

    @Test
    void a_promise_needs_a_chance() {
        assertEquals(1.6448536, SURELY.deviations(), 1e-6);
        assertEquals(Judged.CHEMICAL, lean(80, 1).judged());
    }
}
