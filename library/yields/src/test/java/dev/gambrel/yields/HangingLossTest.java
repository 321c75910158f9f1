package dev.gambrel.yields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.BasisStep;
import org.junit.jupiter.api.Test;

/** The figures follow from the rule that each day takes its share of what the day before left; worked by hand. */
class HangingLossTest {
    private static Expected over(String perDay, int days) {
        return HangingLoss.of(new BasisStep.Hanging.Daily(Sheet.expected(perDay), days));
    }

    @Test
    void one_day_loses_what_a_day_loses() {
        assertEquals(0.3, over("0.3", 1).mean(), 1e-15);
    }

    /** 100 (1 - 0.997 * 0.997) = 0.5991. */
    @Test
    void the_second_day_loses_its_share_of_what_the_first_left() {
        assertEquals(0.5991, over("0.3", 2).mean(), 1e-12);
    }

    @Test
    void a_loss_of_nothing_stays_nothing_and_of_all_is_all() {
        assertEquals(0, over("0", 30).mean(), 0);
        assertEquals(100, over("100", 3).mean(), 0);
    }

    /** d/dp of 1 - (1 - p)^2 is 2 (1 - p): 2 * 0.997 * 0.05 = 0.0997. */
    @Test
    void its_spread_follows_from_the_spread_of_a_day() {
        assertEquals(0.0997, over("0.3 ± 0.05", 2).standardDeviation().orElseThrow(), 1e-12);
    }

    @Test
    void without_a_spread_of_a_day_there_is_none_of_the_days() {
        assertTrue(over("0.3", 7).standardDeviation().isEmpty());
    }

    /** The central range of the share a day, against the exact function at both ends: the first order is near enough. */
    @Test
    void the_first_order_agrees_with_the_exact_function_at_both_ends() {
        Expected week = over("0.3 ± 0.05", 7);
        double sd = week.standardDeviation().orElseThrow();
        assertEquals(over("0.35", 7).mean(), week.mean() + sd, 0.01 * sd);
        assertEquals(over("0.25", 7).mean(), week.mean() - sd, 0.01 * sd);
    }

    @Test
    void the_figures_are_shares() {
        assertEquals(Unit.PERCENT, ((Expected.Mean) over("0.3", 2)).value().unit());
        assertEquals(
                Quantity.of("0.5991", Unit.PERCENT).common(),
                over("0.3", 2).exactMean().stripTrailingZeros());
    }
}
