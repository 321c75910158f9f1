package dev.gambrel.batches;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.batches.FigureReader.Found;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureReaderTest {
    private static FigureReader weights(Unit... headed) {
        return new FigureReader(Dimension.WEIGHT, List.of(headed), BatchOrder.Numbers.WITH_POINT);
    }

    private static Found read(FigureReader reader, String cell) {
        return reader.read(cell.toCharArray(), 0, cell.length());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "21.4|21.4",
                "' 21.4 '|21.4",
                "21,4|21.4",
                "1 021.4|1021.4",
                "1,021.4|1021.4",
                "1.021,4|1021.4",
                "1\u2019021.4|1021.4",
                "1.234.567|1234567",
                "0,125|0.125",
                "12.|12",
                ".5|0.5",
                "-3|-3",
                "\u22123|-3",
                "21.4 kg|21.4",
                "21400 g|21.4",
                "47 lb|21.31884139",
                "47 lb 6 oz|21.48893852875",
                "47lb 6oz|21.48893852875",
            })
    void a_weight_is_read_as_people_write_it(String cell, double kilograms) {
        FigureReader reader = weights(Unit.KILOGRAM);
        assertEquals(Found.FIGURE, read(reader, cell));
        assertEquals(kilograms, reader.value(), 1e-15 * Math.abs(kilograms));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|EMPTY",
                "'  '|EMPTY",
                "n/a|NO_FIGURE",
                "1..2|NO_FIGURE",
                "1 02|NO_FIGURE",
                "12 34.5|NO_FIGURE",
                "-|NO_FIGURE",
                ".|NO_FIGURE",
                "1,234|UNCLEAR",
                "21.4 mm|OTHER_UNIT",
                "21.4 stones|OTHER_UNIT",
                "1e3|OTHER_UNIT",
                "47 lb 17 oz|NO_FIGURE",
                "47 lb 6 g|NO_FIGURE",
                "21 kg 6 oz|NO_FIGURE",
                "12345678901234567890123456789012345|NO_FIGURE",
            })
    void what_is_no_weight_is_told_apart(String cell, Found found) {
        assertEquals(found, read(weights(Unit.KILOGRAM), cell));
    }

    @Example
    void without_a_unit_anywhere_nothing_is_guessed() {
        assertEquals(Found.NO_UNIT, read(weights(), "21.4"));
        assertEquals(Found.FIGURE, read(weights(), "21.4 kg"));
    }

    @Example
    void a_comma_may_be_said_to_stand_before_the_decimals() {
        FigureReader reader = new FigureReader(Dimension.WEIGHT, List.of(Unit.KILOGRAM), BatchOrder.Numbers.WITH_COMMA);
        assertEquals(Found.FIGURE, read(reader, "21,345"));
        assertEquals(21.345, reader.value(), 0);
        assertEquals(Found.FIGURE, read(reader, "1.021"));
        assertEquals(1021, reader.value(), 0);
        assertEquals(Found.FIGURE, read(reader, "21.4"));
        assertEquals(21.4, reader.value(), 0);
    }

    @Property(tries = 2000)
    void plain_digits_are_read_to_the_nearest_double(
            @ForAll @LongRange(min = 0, max = 9_999_999_999_999_999L) long digits,
            @ForAll @IntRange(min = 0, max = 15) int decimals,
            @ForAll Unit unit) {
        if (unit.dimension() == Dimension.TEMPERATURE) {
            return;
        }
        Quantity exact = new Quantity(BigDecimal.valueOf(digits, decimals), unit);
        FigureReader reader = new FigureReader(unit.dimension(), List.of(unit), BatchOrder.Numbers.WITH_POINT);
        assertEquals(Found.FIGURE, read(reader, exact.amount().toPlainString()));
        assertEquals(exact.value(), reader.value(), 0);
    }

    @Property(tries = 2000)
    void no_cell_is_too_much(@ForAll String cell) {
        read(weights(Unit.KILOGRAM), cell);
    }
}
