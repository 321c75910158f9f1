package dev.gambrel.references.ranges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;

class RangeTableLaws {
    @Provide
    Arbitrary<RangeTable> tables() {
        return Arbitraries.of(PublishedRanges.all());
    }

    @Property
    void every_weight_has_one_place_which_its_name_confirms(
            @ForAll("tables") RangeTable table, @ForAll @BigRange(min = "0", max = "900") BigDecimal amount) {
        Quantity weight = new Quantity(amount, Unit.POUND);
        long in = table.ranges().stream()
                .filter(range -> table.isIn(weight, range.name()))
                .count();
        assertEquals(table.place(weight) instanceof Placement.In ? 1 : 0, in);
    }

    @Property
    void every_printed_limit_is_in_a_range_and_ranges_go_up(@ForAll("tables") RangeTable table) {
        Quantity before = Quantity.of("0", Unit.POUND);
        for (PieceRange range : table.ranges()) {
            if (range.bounds() instanceof Bounds.Between between) {
                assertTrue(between.from().compareTo(before) >= 0);
                assertTrue(table.place(between.from()) instanceof Placement.In in
                        && in.range().equals(range));
                assertTrue(table.place(between.to()) instanceof Placement.In);
                before = between.to();
            }
        }
    }
}
