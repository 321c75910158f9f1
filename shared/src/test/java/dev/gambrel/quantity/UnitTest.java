package dev.gambrel.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {
    private static BigDecimal common(String amount, Unit unit) {
        return unit.toCommon(new BigDecimal(amount)).stripTrailingZeros();
    }

    private static BigDecimal exactly(String amount) {
        return new BigDecimal(amount).stripTrailingZeros();
    }

    /** NIST Special Publication 811 (2008), appendix B.8: pound (avoirdupois), exact. */
    @Test
    void a_pound_is_exactly_453_59237_grams() {
        assertEquals(exactly("0.45359237"), common("1", Unit.POUND));
    }

    /** NIST Special Publication 811 (2008), appendix B.8: 2.834 952 E-02 kg; sixteen to the pound. */
    @Test
    void sixteen_ounces_are_a_pound() {
        assertEquals(common("1", Unit.POUND), common("16", Unit.OUNCE));
        assertEquals(
                "0.02834952",
                common("1", Unit.OUNCE)
                        .setScale(8, java.math.RoundingMode.HALF_UP)
                        .toString());
    }

    /** NIST Special Publication 811 (2008), appendix B.8: inch, 2.54 cm exactly. */
    @Test
    void an_inch_is_exactly_25_4_millimetres() {
        assertEquals(exactly("25.4"), common("1", Unit.INCH));
        assertEquals(exactly("12.7"), common("0.5", Unit.INCH));
        assertEquals(common("2.54", Unit.CENTIMETRE), common("1", Unit.INCH));
    }

    /** International System of Units, prefixes; a day of 24 hours, SI Brochure, table 8. */
    @Test
    void metric_units_and_days_are_exact() {
        assertEquals(common("1", Unit.KILOGRAM), common("1000", Unit.GRAM));
        assertEquals(common("1", Unit.CENTIMETRE), common("10", Unit.MILLIMETRE));
        assertEquals(common("7", Unit.DAY), common("168", Unit.HOUR));
    }

    /** NIST Special Publication 811 (2008), appendix B.8: t/°C = (t/°F - 32)/1.8. Compared in ninths of a degree. */
    @ParameterizedTest
    @CsvSource({"32, 0", "212, 900", "-40, -360", "40, 40", "34, 10"})
    void fahrenheit_is_held_exactly_in_ninths_of_a_degree_celsius(String fahrenheit, String ninths) {
        assertEquals(exactly(ninths), common(fahrenheit, Unit.FAHRENHEIT));
    }

    @ParameterizedTest
    @CsvSource({
        "kg, KILOGRAM", "KG, KILOGRAM", "kilos, KILOGRAM", "g, GRAM", "grammes, GRAM", "lb, POUND", "lbs, POUND",
        "Pounds, POUND", "oz, OUNCE", "ounces, OUNCE", "mm, MILLIMETRE", "cm, CENTIMETRE", "in, INCH", "inches, INCH",
        "%, PERCENT", "percent, PERCENT", "°C, CELSIUS", "°F, FAHRENHEIT", "ºC, CELSIUS", "hours, HOUR", "h, HOUR",
        "days, DAY", "day, DAY"
    })
    void a_unit_is_known_by_its_symbol_and_its_words(String written, Unit unit) {
        assertEquals(Optional.of(unit), Unit.of(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "km", "stone", "kgs", "litre", "C", "″", "k g"})
    void what_the_trade_here_does_not_weigh_in_is_no_unit(String written) {
        assertEquals(Optional.empty(), Unit.of(written));
    }

    @ParameterizedTest
    @EnumSource(value = Unit.class, mode = EnumSource.Mode.EXCLUDE, names = "NUMBER")
    void every_unit_is_read_back_from_its_symbol_and_has_a_size(Unit unit) {
        assertEquals(Optional.of(unit), Unit.of(unit.symbol()));
        assertTrue(unit.factor().signum() > 0);
    }

    @Test
    void a_plain_number_has_no_unit_in_print_and_no_words_mean_it() {
        assertEquals(Optional.empty(), Unit.of(""));
        assertEquals("2.75", Quantity.of("2.75", Unit.NUMBER).toString());
    }

    @Test
    void areas_are_squares_of_lengths() {
        for (String length : java.util.List.of("mm", "cm", "in")) {
            var side = Unit.of(length).orElseThrow().factor();
            assertEquals(
                    0,
                    side.multiply(side)
                            .compareTo(Unit.of(length + "²").orElseThrow().factor()));
            assertEquals(Unit.of(length + "²"), Unit.of(length + "2"));
        }
    }

    @Test
    void the_units_of_a_dimension_are_listed_for_a_message() {
        assertEquals("kg, g, lb, oz", Dimension.WEIGHT.unitSymbols());
        assertEquals("mm, cm, in", Dimension.LENGTH.unitSymbols());
        assertEquals("%", Dimension.SHARE.unitSymbols());
        assertEquals("°C, °F", Dimension.TEMPERATURE.unitSymbols());
        assertEquals("hours, days", Dimension.TIME.unitSymbols());
        assertEquals("a weight", Dimension.WEIGHT.words());
    }
}
