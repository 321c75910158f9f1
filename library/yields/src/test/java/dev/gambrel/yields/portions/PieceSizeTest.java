package dev.gambrel.yields.portions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PieceSizeTest {
    /** By adding up a fine grid of sizes. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.3, 0.301, 0.35, 0.399, 0.4, 0.5, 0.7, 0.9, 0.95, 1.0, 1.5, 3.0})
    void the_stated_mean_and_standard_deviation_are_those_of_the_piece(double relative) {
        PieceSize size = PieceSize.of(2, 2 * relative);
        double lowest = 2 - 9 * 2 * Math.min(relative, 0.4);
        double step = (size.largest() - lowest) / 200_000;
        double mean = 0;
        double square = 0;
        for (double x = lowest; x < size.largest(); x += step) {
            double chance = size.between(x, x + step);
            mean += chance * (x + step / 2);
            square += chance * Math.pow(x + step / 2, 2);
        }
        assertEquals(2, mean, 1e-6);
        assertEquals(2 * relative, Math.sqrt(square - mean * mean), 1e-6 * (1 + relative));
        assertEquals(2, size.meanBetween(lowest, Double.POSITIVE_INFINITY), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.15, 0.25, 0.3})
    void a_piece_that_strays_little_is_normal(double relative) {
        NormalDistribution normal = NormalDistribution.of(2, 2 * relative);
        for (double x = 0.1; x < 4; x += 0.1) {
            assertEquals(
                    normal.survivalProbability(x), PieceSize.of(2, 2 * relative).atLeast(x), 1e-15);
        }
    }

    /** Normal below 0.3 of the mean, truncated from 0.4 on, now and then missing beyond 0.9. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.4, 0.9})
    void no_chance_jumps_where_one_way_passes_into_another(double relative) {
        double near = 1e-9;
        for (double x = 0.1; x < 8; x += 0.1) {
            double before = PieceSize.of(2, 2 * (relative - near)).atLeast(x);
            double after = PieceSize.of(2, 2 * (relative + near)).atLeast(x);
            assertEquals(before, after, 10 * near);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.6, 0.9, 2.0})
    void no_piece_weighs_less_than_nothing(double relative) {
        PieceSize size = PieceSize.of(2, 2 * relative);
        assertEquals(0, size.between(-10, 0));
        assertEquals(1, size.under(1) + size.atLeast(1), 1e-15);
    }

    /** Less than 1 in 2000, and it gives no portion. */
    @Test
    void of_a_normal_piece_next_to_nothing_lies_below_nothing() {
        assertTrue(PieceSize.of(2, 0.6).between(-10, 0) < 1 / 2000.0);
    }

    @Test
    void a_piece_of_no_weight_gives_nothing() {
        assertEquals(0, PieceSize.of(0, 1).atLeast(0.001));
        assertEquals(1, PieceSize.of(0, 1).under(0.001));
    }
}
