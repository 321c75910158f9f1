package dev.gambrel.references.ranges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.references.item.Reference;
import dev.gambrel.references.item.Scheme;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RangeTableTest {
    private static RangeTable table(Scheme scheme, String number, String edition) {
        List<RangeTable> tables = PublishedRanges.of(new Reference(scheme, number, edition));
        assertEquals(1, tables.size());
        return tables.get(0);
    }

    private static Quantity weight(String written) {
        String[] parts = written.split(" ");
        return Quantity.of(parts[0], Unit.of(parts[1]).orElseThrow());
    }

    /** IMPS 112 is printed as 5-6, 6-8, 8-10 and 10-up lb. Which range has the edge is our rule. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            4.99 lb, none, false
            5 lb, A, false
            6 lb, B, true
            7.999 lb, B, false
            8 lb, C, true
            3.62873896 kg, C, true
            3.62873895 kg, B, false
            160 oz, D, true
            5000 lb, D, false
            """)
    void a_piece_is_in_one_range_or_in_none(String weight, String range, boolean isOnEdge) {
        Placement place = table(Scheme.IMPS, "112", "1997").place(weight(weight));
        if (range.equals("none")) {
            assertEquals(new Placement.InNone(weight(weight)), place);
        } else {
            Placement.In in = (Placement.In) place;
            assertEquals(range, in.range().name());
            assertEquals(isOnEdge, in.isOnEdge());
        }
    }

    @Test
    void limits_and_membership_are_told() {
        RangeTable ribeye = table(Scheme.IMPS, "112", "");
        assertEquals("B (6 to 8 lb)", ribeye.range("b").orElseThrow().toString());
        assertTrue(ribeye.isIn(weight("6.5 lb"), "B"));
        assertFalse(ribeye.isIn(weight("8 lb"), "B"));
        assertFalse(ribeye.isIn(weight("8 lb"), "X"));
        assertEquals(Optional.empty(), ribeye.range("E"));
    }

    /** The portion ranges and the older pork ranges end, so their last limit is held: 4 to 12 oz is printed for 1112. */
    @Test
    void a_last_range_with_a_top_has_its_top() {
        RangeTable steak = table(Scheme.IMPS, "1112", "2014");
        assertTrue(steak.isIn(weight("12 oz"), "suggested"));
        assertFalse(steak.isIn(weight("12.01 oz"), "suggested"));
    }

    @Test
    void a_first_range_without_a_foot_begins_at_nothing() {
        RangeTable eye = table(Scheme.IMPS, "171C", "");
        assertTrue(eye.isIn(weight("0 lb"), "A"));
        assertTrue(eye.isIn(weight("3 lb"), "B"));
        assertTrue(eye.citation().isFromMemory());
    }

    /** Chart of Australian lamb primals: leg, chump on, 3.3 to 3.9 kg of carcasses from 20 to 24 kg. */
    @Test
    void what_a_leg_weighs_follows_from_the_carcass() {
        assertEquals(
                "3.3 to 3.9 kg",
                AustralianGuide.ofCarcass("4800", weight("22 kg"))
                        .orElseThrow()
                        .bounds()
                        .toString());
        assertEquals(Optional.empty(), AustralianGuide.ofCarcass("4800", weight("30 kg")));
        assertEquals(Optional.empty(), AustralianGuide.ofCarcass("2240", weight("22 kg")));
    }

    @Test
    void two_editions_are_two_tables() {
        assertEquals(2, PublishedRanges.of(Reference.of(Scheme.IMPS, "410")).size());
        assertEquals(
                "18 to 24 lb",
                table(Scheme.IMPS, "410", "2014")
                        .range("B")
                        .orElseThrow()
                        .bounds()
                        .toString());
        assertFalse(PublishedRanges.has(Scheme.UNECE, "2240"));
    }
}
