package dev.gambrel.yields.composition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class BalanceTest {
    private static final Composition SHARES = Composition.of(0.1, 0.3, 0.4, 0.2);

    /** By hand: √½ ln (0.1 / 0.3), and √(4 / 4) ln (√0.03 / √0.08). */
    @Test
    void a_balance_is_the_logarithm_of_a_ratio_of_geometric_means() {
        assertEquals(Math.sqrt(0.5) * Math.log(1.0 / 3), new Balance(List.of(0), List.of(1)).of(SHARES), 1e-12);
        assertEquals(0.5 * Math.log(0.03 / 0.08), new Balance(List.of(0, 1), List.of(2, 3)).of(SHARES), 1e-12);
    }

    @Test
    void the_isometric_log_ratios_are_balances() {
        double[] ilr = SHARES.ilr();
        assertEquals(ilr[0], new Balance(List.of(0), List.of(1)).of(SHARES), 1e-12);
        assertEquals(ilr[1], new Balance(List.of(0, 1), List.of(2)).of(SHARES), 1e-12);
        assertEquals(ilr[2], new Balance(List.of(0, 1, 2), List.of(3)).of(SHARES), 1e-12);
    }

    @Test
    void parts_left_out_do_not_show_in_it() {
        Balance balance = new Balance(List.of(0), List.of(3));
        assertEquals(balance.of(Composition.of(1, 5, 5, 2)), balance.of(Composition.of(1, 70, 0.1, 2)), 1e-12);
    }

    @Test
    void a_part_stands_on_one_side_once() {
        assertThrows(IllegalArgumentException.class, () -> new Balance(List.of(), List.of(1)));
        assertThrows(IllegalArgumentException.class, () -> new Balance(List.of(1), List.of(1)));
        assertThrows(IllegalArgumentException.class, () -> new Balance(List.of(1, 1), List.of(2)));
        assertThrows(IndexOutOfBoundsException.class, () -> new Balance(List.of(1), List.of(9)).of(SHARES));
    }
}
