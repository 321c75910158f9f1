package dev.gambrel.yields.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
    /** Pound 0.45359237 kg and ounce a sixteenth of it: NIST Special Publication 811, appendix B. */
    @ParameterizedTest
    @CsvSource({"KILOGRAM, 2, 11.22", "GRAM, 0, 11218", "POUND, 3, 24.731", "OUNCE, 1, 395.7", "KILOGRAM, 0, 11"})
    void a_weight_is_printed_in_the_unit_asked_for(Unit unit, int decimals, String printed) {
        assertEquals(printed, new Figures(unit, decimals).shown(11.218));
    }

    @Test
    void a_spread_is_printed_one_place_finer_than_its_weight() {
        Line.Spreading spreading =
                new Figures(Unit.KILOGRAM, 2).spreading(new Estimate(1.5246, new Spread.Stated(0.07746862)));
        assertEquals("0.077", spreading.sd());
        assertEquals("1.37 to 1.68", spreading.range());
    }

    @Test
    void a_spread_that_is_not_stated_says_so() {
        Line.Spreading spreading = new Figures(Unit.KILOGRAM, 2).spreading(new Estimate(1.5246, Spread.NOT_STATED));
        assertEquals("not stated", spreading.sd());
        assertEquals("not stated", spreading.range());
    }
}
