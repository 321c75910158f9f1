package dev.gambrel.yields.closure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.Sheet;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CutSharesTest {
    private static CutShares of(int closing, String... shares) {
        return CutShares.of(Arrays.stream(shares).map(Sheet::share).toList(), closing);
    }

    @Test
    void a_rest_takes_what_is_left_wherever_it_is_written() {
        CutShares first = of(0, "", "30 ± 0.3", "50 ± 0.4");
        assertArrayEquals(new double[] {0.2, 0.3, 0.5}, first.mean(), 1e-15);
        assertArrayEquals(new double[] {0.005, 0.003, 0.004}, first.sd(), 1e-15);
        assertInstanceOf(ClosedByOne.class, first.closure());
    }

    @Test
    void parts_that_are_all_with_every_spread_are_conditioned_on_their_sum() {
        assertInstanceOf(Conditioned.class, of(-1, "30 ± 1", "30 ± 1", "40 ± 1").closure());
        assertInstanceOf(PartlyStated.class, of(-1, "30 ± 1", "30", "40 ± 1").closure());
    }

    @Test
    void parts_that_do_not_vary_leave_nothing_to_vary() {
        CutShares fixed = of(-1, "60 ± 0", "40 ± 0");
        assertEquals(0, fixed.closure().variance(new double[] {1, 0}, 0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"60.05", "59.95"})
    void a_twentieth_of_a_point_is_allowed_and_scaled_away(String share) {
        CutShares closed = of(-1, share, "40");
        assertEquals(1, closed.mean()[0] + closed.mean()[1], 1e-15);
    }

    @ParameterizedTest
    @ValueSource(strings = {"60.06", "59.94"})
    void more_than_that_is_refused(String share) {
        assertThrows(IllegalArgumentException.class, () -> of(-1, share, "40"));
    }

    @Test
    void a_rest_of_less_than_nothing_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> of(2, "60", "40.1", ""));
        assertEquals(0, of(2, "60", "40", "").mean()[2]);
    }

    @Test
    void a_spread_that_the_others_cannot_make_up_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> of(-1, "60 ± 2", "30 ± 1", "10 ± 0.5"));
    }

    @Test
    void a_share_that_nobody_stated_is_marked_and_counts_for_nothing() {
        CutShares trimmed = of(2, "", "4 ± 1", "");
        assertArrayEquals(new boolean[] {false, true, true}, trimmed.stated());
        assertEquals(0.96, trimmed.mean()[2], 1e-15);
        assertTrue(Double.isNaN(trimmed.sd()[2]));
    }

    @Test
    void one_part_told_apart_from_the_rest_of_a_cut_is_known_and_two_are_not() {
        Closure partly = of(-1, "30 ± 1", "30 ± 2", "40").closure();
        assertEquals(1e-4, partly.variance(new double[] {1, 0, 0}, 0), 1e-18);
        assertEquals(4e-4, partly.variance(new double[] {1, 0, 1}, 0), 1e-18);
        assertEquals(0, partly.variance(new double[] {3, 3, 3}, 0));
        assertTrue(Double.isNaN(partly.variance(new double[] {0, 0, 1}, 0)));
    }
}
