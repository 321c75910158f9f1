package dev.gambrel.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ExpectedTest {
    private static Quantity percent(String amount) {
        return Quantity.of(amount, Unit.PERCENT);
    }

    private static Quantity grams(String amount) {
        return Quantity.of(amount, Unit.GRAM);
    }

    /** Worked scene 2 of the design: mean 33.0 and sd 0.91838 (3.6 / 3.919928); not 3.6, and not 1.8. */
    @Test
    void a_leg_of_31_2_to_34_8_percent_varies_by_0_918() {
        Expected leg = new Expected.CentralRange(percent("31.2"), percent("34.8"));
        assertEquals(0, leg.exactMean().compareTo(new BigDecimal("33.0")));
        assertEquals(33.0, leg.mean());
        assertEquals(0.91838, leg.standardDeviation().getAsDouble(), 5e-6);
    }

    /** Worked scene 2 of the design: 33.0 ± 0.9 read back as a range is 31.2360 % to 34.7640 %. */
    @Test
    void the_central_range_of_33_plus_or_minus_0_9_is_31_236_to_34_764() {
        Expected leg = new Expected.PlusMinus(percent("33.0"), percent("0.9"));
        double sd = leg.standardDeviation().getAsDouble();
        assertEquals(0.9, sd);
        assertEquals(31.2360, leg.mean() - Expected.NORMAL_95 * sd, 5e-5);
        assertEquals(34.7640, leg.mean() + Expected.NORMAL_95 * sd, 5e-5);
    }

    /** The 97.5 % point of the standard normal distribution, NIST Engineering Statistics Handbook, 1.3.6.7.1: 1.960. */
    @Test
    void the_central_95_percent_reach_1_96_deviations_to_each_side() {
        assertEquals(1.960, Expected.NORMAL_95, 5e-4);
    }

    @Test
    void where_no_spread_is_written_none_is_invented() {
        Expected leg = new Expected.Mean(percent("33.0"));
        assertEquals(OptionalDouble.empty(), leg.standardDeviation());
        assertEquals(33.0, leg.mean());
    }

    @Test
    void a_spread_of_zero_is_not_the_same_as_none() {
        assertEquals(OptionalDouble.of(0), new Expected.PlusMinus(percent("33.0"), percent("0")).standardDeviation());
    }

    @Test
    void a_weight_is_expected_in_kilograms_whatever_it_is_written_in() {
        assertEquals(0.18, new Expected.Mean(grams("180")).mean());
        assertEquals(
                0.006,
                new Expected.PlusMinus(grams("180"), grams("6"))
                        .standardDeviation()
                        .getAsDouble());
        Expected mixed = new Expected.CentralRange(grams("900"), Quantity.of("1.1", Unit.KILOGRAM));
        assertEquals(0, mixed.exactMean().compareTo(BigDecimal.ONE));
    }

    @Test
    void an_expectation_is_printed_as_it_was_written() {
        assertEquals("33.0 %", new Expected.Mean(percent("33.0")).toString());
        assertEquals("33.0 % ± 0.9 %", new Expected.PlusMinus(percent("33.0"), percent("0.9")).toString());
        assertEquals("31.2 % to 34.8 %", new Expected.CentralRange(percent("31.2"), percent("34.8")).toString());
    }

    @Test
    void figures_of_any_size_have_an_exact_mean() {
        Expected vast = new Expected.CentralRange(percent("1E-9999"), percent("1E+9999"));
        assertTrue(vast.exactMean().compareTo(new BigDecimal("5E+9998")) > 0);
        assertEquals(Double.POSITIVE_INFINITY, vast.mean());
        assertEquals(Double.POSITIVE_INFINITY, vast.standardDeviation().getAsDouble());
    }
}
