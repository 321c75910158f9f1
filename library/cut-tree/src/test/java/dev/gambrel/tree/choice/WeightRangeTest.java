package dev.gambrel.tree.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class WeightRangeTest {
    private static final Quantity KILOGRAM = Quantity.of("1.0", Unit.KILOGRAM);
    private static final Quantity THOUSAND_GRAMS = Quantity.of("1000", Unit.GRAM);

    private static WeightRange range(Bound... bounds) {
        return WeightRange.within(List.of(bounds));
    }

    private static Bound bound(Bound.Kind kind, Quantity weight) {
        return new Bound(kind, weight);
    }

    @Test
    void the_figure_itself_is_in_at_most_and_at_least_and_in_neither_under_nor_over() {
        assertTrue(range(bound(Bound.Kind.AT_MOST, KILOGRAM)).holds(THOUSAND_GRAMS));
        assertTrue(range(bound(Bound.Kind.AT_LEAST, KILOGRAM)).holds(THOUSAND_GRAMS));
        assertFalse(range(bound(Bound.Kind.UNDER, KILOGRAM)).holds(THOUSAND_GRAMS));
        assertFalse(range(bound(Bound.Kind.OVER, KILOGRAM)).holds(THOUSAND_GRAMS));
    }

    @Test
    void a_hair_less_is_under() {
        Quantity hair = Quantity.of("0.9999999999999999999999999999999999", Unit.KILOGRAM);
        assertTrue(range(bound(Bound.Kind.UNDER, KILOGRAM)).holds(hair));
        assertFalse(range(bound(Bound.Kind.AT_LEAST, KILOGRAM)).holds(hair));
    }

    @Test
    void between_under_and_over_lies_exactly_one_weight() {
        WeightRange gap = new WeightRange(
                range(bound(Bound.Kind.UNDER, KILOGRAM)).to(),
                range(bound(Bound.Kind.OVER, KILOGRAM)).from());
        assertFalse(gap.isEmpty());
        assertEquals("exactly 1.0 kg", gap.toString());
    }

    @Test
    void between_under_and_at_least_lies_nothing() {
        assertTrue(new WeightRange(
                        range(bound(Bound.Kind.UNDER, KILOGRAM)).to(),
                        range(bound(Bound.Kind.AT_LEAST, THOUSAND_GRAMS)).from())
                .isEmpty());
    }

    @Test
    void nothing_weighs_nothing() {
        assertTrue(range(bound(Bound.Kind.AT_MOST, Quantity.of("0", Unit.GRAM))).isEmpty());
        assertFalse(WeightRange.ALL.holds(Quantity.of("0", Unit.GRAM)));
        assertTrue(WeightRange.ALL.holds(Quantity.of("0.001", Unit.GRAM)));
        assertEquals("of any weight", WeightRange.ALL.toString());
    }

    @Test
    void a_bound_is_a_weight() {
        Quantity length = Quantity.of("5", Unit.MILLIMETRE);
        assertThrows(IllegalArgumentException.class, () -> bound(Bound.Kind.UNDER, length));
    }
}
