package dev.gambrel.yields.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class GroupComparisonTest {
    private static GroupComparison compared(Group... groups) {
        return assertInstanceOf(GroupComparison.class, GroupComparison.of(List.of(groups)));
    }

    /** NIST/SEMATECH e-Handbook of Statistical Methods, 7.4.3.4 (from memory): F = 9.59 with 2 and 12 degrees of freedom. */
    @Test
    void three_groups_have_the_published_statistic() {
        GroupComparison comparison = compared(
                new Group("one", List.of(6.9, 5.4, 5.8, 4.6, 4.0)),
                new Group("two", List.of(8.3, 6.8, 7.8, 9.2, 6.5)),
                new Group("three", List.of(8.0, 10.5, 8.1, 6.9, 9.3)));
        assertEquals(9.59, comparison.statistic(), 0.005);
        assertEquals(2, comparison.between());
        assertEquals(12, comparison.within());
        assertEquals(0.0032482226, comparison.chance(), 1e-9);
        assertTrue(comparison.differences().get(0).isTold());
    }

    /**
     * Hours of sleep gained, Student, "The probable error of a mean", 1908: by Welch's test t = −1.8608, 17.776 degrees of freedom, a chance
     * of 0.07939 and a range from −3.3654832 to 0.2054832, as printed in the documentation of R (from memory; computed independently).
     */
    @Test
    void two_groups_have_the_published_difference() {
        GroupComparison comparison = compared(
                new Group("one", List.of(0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0)),
                new Group("two", List.of(1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4)));
        GroupDifference one = comparison.differences().get(0);
        assertEquals(-1.58, one.test().difference(), 1e-12);
        assertEquals(-1.8608, one.test().statistic(), 0.00005);
        assertEquals(17.776, one.test().freedom(), 0.0005);
        assertEquals(0.07939, one.chance(), 0.000005);
        assertEquals(-3.3654832, one.range().low(), 1e-7);
        assertEquals(0.2054832, one.range().high(), 1e-7);
        assertFalse(one.isTold());
        assertEquals(1.58, comparison.differences().get(1).test().difference(), 1e-12);
    }

    /** Cutter B leaves 1.2 points less bone. */
    @Test
    void a_cutter_who_leaves_less_bone_is_told_in_points() {
        GroupComparison comparison = compared(
                new Group("A", List.of(15.1, 14.9, 15.3, 15.0, 14.7)),
                new Group("B", List.of(13.9, 13.6, 13.8, 14.0, 13.7)),
                new Group("C", List.of(15.0, 15.2, 14.8)),
                new Group("D", List.of(19.0)));
        GroupDifference b = comparison.differences().get(1);
        assertEquals(-1.2, b.test().difference(), 1e-12);
        assertEquals(5, b.tests());
        assertEquals(8, b.elsewhere());
        assertTrue(b.isTold() && b.range().high() < 0);
        assertEquals(List.of("D"), comparison.leftOut());
        double alone = b.test().chance();
        assertEquals(1 - Math.pow(1 - alone, 3), b.chance(), 1e-12);
    }

    @Test
    void a_difference_is_told_where_its_range_leaves_out_none_at_all() {
        GroupComparison comparison = compared(
                new Group("A", List.of(15.1, 14.1, 15.3, 15.0)),
                new Group("B", List.of(13.9, 14.6, 13.8, 14.0)),
                new Group("C", List.of(15.0, 15.2, 13.8)));
        for (GroupDifference each : comparison.differences()) {
            boolean leavesOut = each.range().low() > 0 || each.range().high() < 0;
            assertEquals(each.isTold(), leavesOut);
        }
    }

    @Test
    void groups_that_cannot_be_compared_say_why() {
        Group single = new Group("A", List.of(15.0));
        Group several = new Group("B", List.of(15.0, 14.0));
        assertEquals(new GroupAnswer.TooFew(List.of("B")), GroupComparison.of(List.of(single, several)));
        assertEquals(new GroupAnswer.TooFew(List.of()), GroupComparison.of(List.of()));
        assertEquals(
                new GroupAnswer.NeverVaries(),
                GroupComparison.of(List.of(new Group("A", List.of(0.1, 0.1)), new Group("B", List.of(0.2, 0.2)))));
        assertThrows(IllegalArgumentException.class, () -> GroupComparison.of(List.of(several, several)));
        assertThrows(IllegalArgumentException.class, () -> new Group("A", List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Group("A", List.of(Double.NaN)));
    }
}
