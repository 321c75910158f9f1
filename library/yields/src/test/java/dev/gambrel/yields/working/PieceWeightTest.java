package dev.gambrel.yields.working;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.choice.Bound;
import dev.gambrel.tree.choice.WeightRange;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PieceWeightTest {
    private static WeightRange is(Bound.Kind kind, String kilograms) {
        return WeightRange.within(List.of(new Bound(kind, Quantity.of(kilograms, Unit.KILOGRAM))));
    }

    private static WeightRange between(String low, String high) {
        return is(Bound.Kind.AT_LEAST, low).and(is(Bound.Kind.UNDER, high));
    }

    /** At the mean half of the pieces are lighter, and lighter than half by φ(0) = 0.3989423 standard deviations. */
    @Test
    void half_of_the_pieces_lie_under_the_mean_and_less_than_half_of_the_weight() {
        Split under = new PieceWeight(1.0, 0.1).within(is(Bound.Kind.UNDER, "1.0"));
        assertEquals(0.5, under.pieces(), 1e-12);
        assertEquals(0.5 - 0.1 * 0.398942280401433, under.weight(), 1e-12);
    }

    /** The exact partial expectations against draws of a normal weight. */
    @ParameterizedTest
    @CsvSource({"0.76, 0.04, 0.70, 0.80", "1.0, 0.2, 0.9, 1.0", "1.0, 0.1, 1.1, 1.3", "2.0, 0.3, 1.0, 1.5"})
    void parts_of_pieces_and_of_weight_agree_with_draws(double mean, double deviation, String low, String high) {
        int draws = 400_000;
        Random random = new Random(20_260_101);
        int within = 0;
        double weight = 0;
        for (int i = 0; i < draws; i++) {
            double piece = mean + deviation * random.nextGaussian();
            if (piece >= Double.parseDouble(low) && piece < Double.parseDouble(high)) {
                within++;
                weight += piece;
            }
        }
        Split exact = new PieceWeight(mean, deviation).within(between(low, high));
        double fourErrors = 4 * Math.sqrt(0.25 / draws);
        assertEquals((double) within / draws, exact.pieces(), fourErrors);
        assertEquals(weight / draws / mean, exact.weight(), fourErrors * (mean + 4 * deviation) / mean);
    }

    @Test
    void ranges_that_meet_take_everything() {
        PieceWeight piece = new PieceWeight(0.76, 0.3);
        Split all = piece.within(is(Bound.Kind.UNDER, "0.5"))
                .plus(piece.within(between("0.5", "0.9")))
                .plus(piece.within(is(Bound.Kind.AT_LEAST, "0.9")));
        assertEquals(1, all.pieces(), 1e-12);
        assertEquals(1, all.weight(), 1e-12);
    }

    @Test
    void without_a_spread_the_mean_decides() {
        PieceWeight piece = new PieceWeight(1.0, 0);
        assertEquals(Split.NONE, piece.within(is(Bound.Kind.UNDER, "1.0")));
        assertEquals(Split.ALL, piece.within(is(Bound.Kind.AT_LEAST, "1.0")));
    }

    @Test
    void a_mean_that_only_rounding_parts_from_the_limit_is_the_limit() {
        assertEquals(Split.NONE, new PieceWeight(0.1 + 0.2, 0).within(is(Bound.Kind.OVER, "0.3")));
    }
}
