package dev.gambrel.blends;

import static dev.gambrel.blends.Trim.PLENTY;
import static dev.gambrel.blends.Trim.atMostFat;
import static dev.gambrel.blends.Trim.exactlyFat;
import static dev.gambrel.blends.Trim.fat;
import static dev.gambrel.blends.Trim.of;
import static dev.gambrel.blends.Trim.tubs;
import static dev.gambrel.blends.Trim.visual;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.blends.solver.NoAnswer;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Tubs of round figures, worked out by hand. */
class LeastCostTest {
    private static final Tubs SHOP =
            tubs(fat("shoulder", 20, 100, 5), fat("belly", 50, 100, 3), fat("back fat", 90, 100, 0.5));

    /** Shoulder and belly cost 3.67 a kilogram, shoulder and back fat 3.71. Of the belly there are 100 kg. */
    @Test
    void a_stock_that_runs_out_is_made_up_from_the_next() {
        Blend small = cheapest(exactlyFat(40), 120);
        assertEquals(40, of(small, "shoulder"), 1e-9);
        assertEquals(80, of(small, "belly"), 1e-9);
        Blend large = cheapest(exactlyFat(40), 171);
        assertEquals(65, of(large, "shoulder"), 1e-9);
        assertEquals(100, of(large, "belly"), 1e-9);
        assertEquals(60, large.lean().mean(), 1e-9);
    }

    @Test
    void a_range_of_lean_is_taken_at_the_cheap_end() {
        Blend blend = cheapest(new LeanTarget(Judged.CHEMICAL, 55, 65), 50);
        assertEquals(55, blend.lean().mean(), 1e-9);
    }

    @Test
    void without_prices_the_leanest_meat_is_spared() {
        Tubs tubs = tubs(visual("lean", 95, 50), visual("80s", 80, 50), visual("60s", 60, 50));
        Blend blend = new LeastCost()
                .of(new BatchOrder(tubs, LeanTarget.exactly(80, Judged.VISUAL), 40))
                .orElseThrow()
                .blend();
        assertEquals(40, of(blend, "80s"), 1e-9);
    }

    @Test
    void without_prices_a_point_of_lean_has_none_either() {
        Tubs tubs = tubs(visual("lean", 95, 50), visual("60s", 60, 50));
        assertEquals(
                new PointOfLean.NoPrices(),
                new LeastCost()
                        .of(new BatchOrder(tubs, LeanTarget.exactly(80, Judged.VISUAL), 40))
                        .orElseThrow()
                        .leaner());
    }

    @Test
    void a_batch_at_the_edge_of_what_is_there_can_be_no_leaner() {
        CheapestBatch batch =
                new LeastCost().of(new BatchOrder(SHOP, exactlyFat(20), 100)).orElseThrow();
        assertEquals(new PointOfLean.NotPossible(), batch.leaner());
        assertTrue(((PointOfLean.Costs) batch.fatter()).money() < 0);
    }

    @Test
    void of_equally_cheap_blends_the_one_nearest_to_the_target_is_made_each_time() {
        Tubs level = tubs(
                fat("a", 10, PLENTY, 9), fat("b", 30, PLENTY, 7), fat("c", 50, PLENTY, 5), fat("d", 70, PLENTY, 3));
        BatchOrder order = new BatchOrder(level, exactlyFat(30), 10);
        Blend first = new LeastCost().of(order).orElseThrow().blend();
        assertEquals(10, of(first, "b"), 1e-6);
        for (int i = 0; i < 20; i++) {
            assertEquals(first, new LeastCost().of(order).orElseThrow().blend());
        }
    }

    @Test
    void more_than_there_is_is_refused_with_what_there_is() {
        assertEquals(
                "The batch is to be 301 kg; all that is there is 300 kg.",
                only(new BatchOrder(SHOP, exactlyFat(40), 301)).message());
    }

    @Test
    void a_lean_that_the_stocks_cannot_give_to_that_weight_is_refused_with_the_range() {
        assertEquals(
                "The blend is to be at least 78 % lean, chemical; what is there gives from 30 % to 70 %, which misses it by 8"
                        + " points.",
                only(new BatchOrder(SHOP, atMostFat(22), 150)).message().replace("23.33 %", "30 %"));
    }

    @Test
    void a_limit_that_cannot_hold_is_named_with_what_is_missing() {
        Limit belly = Limit.atLeast("belly at least 80 kg", Set.of(TradeName.of("belly")), 80);
        Limit fat = Limit.atMost("back fat at most 5 kg", Set.of(TradeName.of("back fat")), 5);
        Diagnostic found = only(new BatchOrder(SHOP, atMostFat(30), 100, List.of(belly, fat), Promise.ON_AVERAGE));
        assertEquals(
                "“belly at least 80 kg” cannot hold in a batch of 100 kg that is at least 70 % lean, chemical: at the best it"
                        + " is missed by 46.667 kg.",
                found.message());
    }

    @Test
    void where_the_solver_gives_up_that_is_a_finding_and_no_guess() {
        LeastCost tired = new LeastCost(programme -> {
            throw new NoAnswer("tired");
        });
        assertEquals(
                "The batch of 10 kg that is exactly 60 % lean, chemical could not be worked out; its figures lie very far"
                        + " apart.",
                tired.of(new BatchOrder(SHOP, exactlyFat(40), 10))
                        .diagnostics()
                        .get(0)
                        .message());
    }

    @Test
    void a_price_for_some_tubs_only_is_refused() {
        Tubs tubs = tubs(
                fat("shoulder", 20, 100, 5), new Tub(TradeName.of("belly"), Trim.lean(50, 1), 100, Price.NOT_STATED));
        assertEquals(
                "belly has no price, and shoulder has one.",
                only(new BatchOrder(tubs, exactlyFat(40), 10)).message());
    }

    private static Blend cheapest(LeanTarget target, double kilograms) {
        return new LeastCost()
                .of(new BatchOrder(SHOP, target, kilograms))
                .orElseThrow()
                .blend();
    }

    private static Diagnostic only(BatchOrder order) {
        List<Diagnostic> found = new LeastCost().of(order).diagnostics();
        assertEquals(1, found.size(), found.toString());
        return found.get(0);
    }
}
