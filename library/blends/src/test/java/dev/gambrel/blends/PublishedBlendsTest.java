package dev.gambrel.blends;

import static dev.gambrel.blends.Trim.PLENTY;
import static dev.gambrel.blends.Trim.exactlyFat;
import static dev.gambrel.blends.Trim.fat;
import static dev.gambrel.blends.Trim.of;
import static dev.gambrel.blends.Trim.tubs;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.lean.Lean;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Blends that are printed with their answers, by the square, by the largest batch and at the least cost. */
class PublishedBlendsTest {
    /**
     * Meat formulation problem of a state meats evaluation contest for schools, 2016 (a copy: studylib.net/doc/25302172): pork
     * shoulder of 23 % fat at 1.78 a pound and trim of 70 % at 1.56, to 28 %. 1.76 is among the printed choices; the weights for
     * 500 lb were worked out from it by hand.
     */
    private static final Tubs CONTEST =
            tubs(fat("shoulder", 23, PLENTY, 1.78), fat("trim of 70 % fat", 70, PLENTY, 1.56));

    @Test
    void the_contest_s_shoulder_and_trim_go_together_by_the_square() {
        PearsonSquare square = square(23, 70, 28);
        assertEquals(446.809, 500 * square.one(), 0.001);
        assertEquals(53.191, 500 * square.other(), 0.001);
        assertEquals(1.76, 1.78 * square.one() + 1.56 * square.other(), 0.005);
    }

    /** As a linear programme, computed by two other solvers to 1.756595745 a pound. */
    @Test
    void the_contest_s_cheapest_blend_is_that_square_and_a_point_of_fat_is_worth_half_a_cent() {
        CheapestBatch batch =
                new LeastCost().of(new BatchOrder(CONTEST, exactlyFat(28), 500)).orElseThrow();
        assertEquals(446.809, of(batch.blend(), "shoulder"), 0.001);
        assertEquals(1.756595745, batch.blend().cost().orElseThrow() / 500, 1e-8);
        assertEquals(-0.004680851, ((PointOfLean.Costs) batch.fatter()).money(), 1e-8);
        assertEquals(0.004680851, ((PointOfLean.Costs) batch.leaner()).money(), 1e-8);
    }

    /** Lesson "Meat Calculations" (slideplayer.com/slide/7660647): the question is printed, the answer worked out by hand. */
    @Test
    void the_lesson_s_thousand_pounds_of_ground_beef() {
        PearsonSquare square = square(10, 25, 20);
        assertEquals(333.333, 1000 * square.one(), 1e-3);
        assertEquals(666.667, 1000 * square.other(), 1e-3);
        assertEquals(0.856667, 0.99 * square.one() + 0.79 * square.other(), 1e-6);
    }

    /** A worked square on a sausage makers' forum, 28 July 2007: 30 % and 12 % fat to 20 %, 8 parts to 10. */
    @Test
    void the_forum_s_eight_parts_to_ten() {
        PearsonSquare square = square(30, 12, 20);
        assertEquals(8.0 / 18, square.one(), 1e-12);
        assertEquals(10.0 / 18, square.other(), 1e-12);
    }

    /**
     * Beef at 6, pork at 4 and fat at 2 a kilogram, 50 kg; fat at most 10 kg, pork at most a quarter of the beef (algebra.com,
     * question 1148051): 32, 8 and 10 kg are printed, their cost worked out from them. Nothing is asked of lean.
     */
    @Test
    void beef_pork_and_fat_with_limits_on_groups() {
        Tubs tubs = tubs(fat("beef", 10, PLENTY, 6), fat("pork", 25, PLENTY, 4), fat("fat", 95, PLENTY, 2));
        List<Limit> limits = List.of(
                Limit.atMost("fat at most 10 kg", Set.of(TradeName.of("fat")), 10),
                Limit.atMostPartOf(
                        "pork at most 25 % of beef", Set.of(TradeName.of("pork")), 0.25, Set.of(TradeName.of("beef"))));
        Blend blend = new LeastCost()
                .of(new BatchOrder(tubs, LeanTarget.atLeast(0, Judged.CHEMICAL), 50, limits, Promise.ON_AVERAGE))
                .orElseThrow()
                .blend();
        assertEquals(32, of(blend, "beef"), 1e-9);
        assertEquals(8, of(blend, "pork"), 1e-9);
        assertEquals(10, of(blend, "fat"), 1e-9);
        assertEquals(244, blend.cost().orElseThrow(), 1e-9);
    }

    private static PearsonSquare square(double fat, double otherFat, double wanted) {
        return PearsonSquare.of(
                        Lean.of(100 - fat, Judged.CHEMICAL), Lean.of(100 - otherFat, Judged.CHEMICAL), 100 - wanted)
                .orElseThrow();
    }
}
