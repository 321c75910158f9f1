package dev.gambrel.tree.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DimensionsTest {
    private static Dimensions of(Dimension dimension) {
        return Dimensions.of(dimension);
    }

    @Test
    void an_area_is_a_length_twice() {
        assertEquals(of(Dimension.AREA), of(Dimension.LENGTH).times(of(Dimension.LENGTH)));
    }

    @Test
    void a_weight_over_a_weight_is_a_plain_number_and_no_share() {
        Dimensions ratio = of(Dimension.WEIGHT).times(of(Dimension.WEIGHT).inverse());
        assertEquals(Optional.of(Dimension.NUMBER), ratio.plain());
        assertEquals(
                Optional.of(Dimension.SHARE), ratio.times(of(Dimension.SHARE)).plain());
    }

    @Test
    void so_many_per_cent_for_each_millimetre_is_nothing_that_has_a_name_alone() {
        var perMillimetre = new Expression.Coefficient(Quantity.of("0.8", Unit.PERCENT), List.of(Unit.MILLIMETRE));
        assertEquals(Optional.empty(), Dimensions.of(perMillimetre).plain());
        assertEquals("% per mm", Dimensions.of(perMillimetre).words());
        assertEquals(
                Optional.of(Dimension.SHARE),
                Dimensions.of(perMillimetre).times(of(Dimension.LENGTH)).plain());
    }

    @Test
    void what_has_no_name_is_told_in_units() {
        Dimensions odd = of(Dimension.WEIGHT)
                .times(of(Dimension.TIME))
                .times(of(Dimension.AREA).inverse());
        assertEquals("kg × hours per mm^2", odd.words());
        assertEquals("a number per kg", of(Dimension.WEIGHT).inverse().words());
    }

    @ParameterizedTest
    @EnumSource(value = Dimension.class, mode = EnumSource.Mode.EXCLUDE, names = "TEMPERATURE")
    void every_dimension_but_temperature_is_found_again(Dimension dimension) {
        assertEquals(Optional.of(dimension), of(dimension).plain());
        assertEquals(dimension.words(), of(dimension).words());
    }

    @Test
    void no_multiple_of_a_temperature_has_a_meaning() {
        assertThrows(IllegalArgumentException.class, () -> of(Dimension.TEMPERATURE));
    }
}
