package dev.gambrel.json.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class CanonicalPrinterTest {
    private static String printed(String number) {
        return CanonicalPrinter.print(new Canonical.Figure(new BigDecimal(number)))
                .strip();
    }

    @Test
    void a_number_is_a_plain_decimal() {
        assertEquals("33.0", printed("33.0"));
        assertEquals("1000", printed("1E+3"));
        assertEquals("0.00000000000000000000000000001", printed("1E-29"));
    }

    /** Seven characters of a hostile file would otherwise come out as ten thousand. */
    @Test
    void a_number_of_many_zeros_has_a_power_of_ten() {
        assertEquals("1E-9999", printed("1E-9999"));
        assertEquals("1.5E+9999", printed("1.5E+9999"));
    }

    @Test
    void what_is_printed_is_the_same_number() {
        for (int exponent = -200; exponent <= 200; exponent++) {
            BigDecimal number = new BigDecimal("12.5").scaleByPowerOfTen(exponent);
            assertEquals(0, number.compareTo(new BigDecimal(printed(number.toString()))));
            assertTrue(printed(number.toString()).length() <= 80);
        }
    }
}
