package dev.gambrel.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

class QuantityTest {
    private static final BigDecimal LARGEST = new BigDecimal("9".repeat(34)).scaleByPowerOfTen(9_999);

    private static Quantity q(String amount, Unit unit) {
        return Quantity.of(amount, unit);
    }

    private static String rounded(BigDecimal amount, int places) {
        return amount.setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    /** Worked scene of the design: 47 lb 6 oz, with the pound of NIST Special Publication 811, is 21.488939 kg. */
    @Test
    void forty_seven_pounds_six_ounces_are_21_488939_kilograms() {
        assertEquals("21.488939", rounded(q("47.375", Unit.POUND).common(), 6));
        assertEquals(0, q("47.375", Unit.POUND).compareTo(q("758", Unit.OUNCE)));
    }

    /** From the exact ounce of NIST Special Publication 811: 8 × 28.349523125 g. */
    @Test
    void eight_ounces_are_226_796_grams() {
        BigDecimal grams = q("8", Unit.OUNCE).common().scaleByPowerOfTen(3);
        assertEquals("226.796", rounded(grams, 3));
        assertEquals(0, grams.compareTo(new BigDecimal("226.796185")));
    }

    /** From the formula of NIST Special Publication 811: (40 - 32)/1.8 = 4.444. */
    @Test
    void forty_degrees_fahrenheit_is_warmer_than_four_celsius() {
        assertTrue(q("40", Unit.FAHRENHEIT).compareTo(q("4", Unit.CELSIUS)) > 0);
        assertTrue(q("40", Unit.FAHRENHEIT).compareTo(q("4.444", Unit.CELSIUS)) > 0);
        assertTrue(q("40", Unit.FAHRENHEIT).compareTo(q("4.445", Unit.CELSIUS)) < 0);
        assertEquals(0, q("39.2", Unit.FAHRENHEIT).compareTo(q("4", Unit.CELSIUS)));
    }

    /** From the same formula: 30 °F is -1.111 °C, just colder than -1.11 °C, and 34 °F is 1.111 °C. */
    @Test
    void a_chill_near_freezing_is_compared_exactly() {
        assertTrue(q("34", Unit.FAHRENHEIT).compareTo(q("1.11", Unit.CELSIUS)) > 0);
        assertTrue(q("34", Unit.FAHRENHEIT).compareTo(q("-1.11", Unit.CELSIUS)) > 0);
        assertTrue(q("30", Unit.FAHRENHEIT).compareTo(q("-1.11", Unit.CELSIUS)) < 0);
        assertTrue(q("30", Unit.FAHRENHEIT).compareTo(q("-1.12", Unit.CELSIUS)) > 0);
    }

    @Test
    void a_kilogram_and_a_thousand_grams_weigh_the_same_but_are_not_the_same_writing() {
        assertEquals(0, q("1", Unit.KILOGRAM).compareTo(q("1000", Unit.GRAM)));
        assertEquals(0, q("33.0", Unit.PERCENT).compareTo(q("33", Unit.PERCENT)));
        assertNotEquals(q("33.0", Unit.PERCENT), q("33", Unit.PERCENT));
    }

    @Test
    void a_difference_in_the_last_of_many_digits_counts() {
        assertTrue(q("1.000000000000000000000000000000001", Unit.KILOGRAM).compareTo(q("1000", Unit.GRAM)) > 0);
    }

    @Test
    void a_weight_is_not_compared_with_a_length() {
        Quantity weight = q("1", Unit.KILOGRAM);
        var refused = assertThrows(IllegalArgumentException.class, () -> weight.compareTo(q("1", Unit.INCH)));
        assertEquals("a weight cannot be compared with a length", refused.getMessage());
        assertEquals(Dimension.WEIGHT, weight.dimension());
    }

    @Test
    void a_figure_is_printed_as_it_was_written() {
        assertEquals("33.0 %", q("33.0", Unit.PERCENT).toString());
        assertEquals("0.50 in", q("0.50", Unit.INCH).toString());
        assertEquals("-1.11 °C", q("-1.11", Unit.CELSIUS).toString());
        assertEquals("1200 g", q("1.2E+3", Unit.GRAM).toString());
        assertEquals("1E+9999 kg", q("1E+9999", Unit.KILOGRAM).toString());
        assertEquals("1E-9999 kg", q("1E-9999", Unit.KILOGRAM).toString());
    }

    @Test
    void a_number_has_at_most_34_digits() {
        assertEquals(34, q("1".repeat(34), Unit.GRAM).amount().precision());
        assertThrows(IllegalArgumentException.class, () -> q("1".repeat(35), Unit.GRAM));
        assertThrows(IllegalArgumentException.class, () -> q("0." + "1".repeat(35), Unit.GRAM));
    }

    @Test
    void a_number_has_an_exponent_of_at_most_9999() {
        assertTrue(Quantity.isAcceptable(new BigDecimal("1E+9999")));
        assertTrue(Quantity.isAcceptable(new BigDecimal("1E-9999")));
        assertFalse(Quantity.isAcceptable(new BigDecimal("1E+10000")));
        assertFalse(Quantity.isAcceptable(new BigDecimal("1E-10000")));
        assertFalse(Quantity.isAcceptable(new BigDecimal("1E+2147483647")));
        assertFalse(Quantity.isAcceptable(BigDecimal.valueOf(1, Integer.MIN_VALUE)));
    }

    @Test
    void what_is_no_number_is_refused() {
        assertThrows(NumberFormatException.class, () -> q("22,4", Unit.KILOGRAM));
        assertThrows(NumberFormatException.class, () -> q("", Unit.KILOGRAM));
    }

    @Test
    void a_worked_out_figure_is_shown_with_34_digits() {
        assertEquals("0.3333333333333333333333333333333333 %", shown(new BigDecimal("0." + "3".repeat(50))));
        assertEquals("16.5 %", shown(new BigDecimal("16.5")));
    }

    @Test
    void a_worked_out_figure_beyond_what_can_be_held_is_shown_as_the_largest_or_as_nothing() {
        assertEquals("1E+9999 %", shown(LARGEST.scaleByPowerOfTen(1)));
        assertEquals("-1E+9999 %", shown(LARGEST.scaleByPowerOfTen(1).negate()));
        assertEquals("0 %", shown(new BigDecimal("1E-20000")));
    }

    private static String shown(BigDecimal amount) {
        return Quantity.rounded(amount, Unit.PERCENT).toString();
    }

    @Test
    void the_double_is_the_nearest_to_the_exact_value() {
        assertEquals(0.45359237, q("1", Unit.POUND).value());
        assertEquals(0.1, q("100", Unit.GRAM).value());
        assertEquals(Double.POSITIVE_INFINITY, q("1E+9999", Unit.KILOGRAM).value());
        assertEquals(0.0, q("1E-9999", Unit.KILOGRAM).value());
    }
}
