package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.loss;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.Sheet.trim;
import static dev.gambrel.tree.rules.Held.breaks;
import static dev.gambrel.tree.rules.Held.keepsTheRules;
import static dev.gambrel.tree.rules.Held.only;
import static dev.gambrel.tree.rules.Held.where;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.inspection.TreeCode;
import org.junit.jupiter.api.Test;

class SpreadsTest {
    @Test
    void two_parts_that_close_vary_alike() {
        keepsTheRules(Sheet.of(cut("leg", "33 ± 0.9"), cut("loin", "67 ± 0.9")));
        Diagnostic finding =
                only(Sheet.of(cut("leg", "33 ± 0.9"), cut("loin", "67 ± 0.8")), TreeCode.IMPOSSIBLE_SPREAD);
        assertEquals(
                "The spread of the leg is 0.9 %, more than those of all other parts of the carcass together, 0.8 %.",
                finding.message());
        assertEquals("leg, share", where(finding.place()));
    }

    @Test
    void the_largest_spread_may_equal_the_sum_of_the_others() {
        keepsTheRules(Sheet.of(cut("leg", "33 ± 0.3"), cut("loin", "40 ± 0.1"), cut("neck", "27 ± 0.2")));
        breaks(
                Sheet.of(cut("leg", "33 ± 0.3001"), cut("loin", "40 ± 0.1"), cut("neck", "27 ± 0.2")),
                TreeCode.IMPOSSIBLE_SPREAD);
    }

    @Test
    void spreads_written_as_ranges_are_weighed_the_same() {
        keepsTheRules(Sheet.of(cut("leg", "31.2 to 34.8"), cut("loin", "65.2 to 68.8")));
        breaks(Sheet.of(cut("leg", "31.2 to 34.8"), cut("loin", "65.3 to 68.7")), TreeCode.IMPOSSIBLE_SPREAD);
    }

    @Test
    void a_rest_gives_way_to_any_spread() {
        keepsTheRules(Sheet.of(cut("leg", "33 ± 9"), cut("loin", "12 ± 0.1"), rest("mince")));
    }

    @Test
    void what_is_left_of_a_trimmed_cut_gives_way_too() {
        keepsTheRules(Sheet.of(cut("leg", "100", trim("fat", "4 ± 2"), loss("saw", "0.5 ± 0.1"))));
    }

    @Test
    void a_part_cannot_vary_alone() {
        Diagnostic finding = only(Sheet.of(cut("leg", "33 ± 0.9"), cut("loin", "67")), TreeCode.LONE_SPREAD);
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals(
                "Only for the leg is a spread written; where the parts of the carcass must make 100 %, one cannot"
                        + " vary alone.",
                finding.message());
    }

    @Test
    void a_lone_spread_of_nothing_is_no_matter() {
        keepsTheRules(Sheet.of(cut("leg", "33 ± 0"), cut("loin", "67")));
    }

    @Test
    void where_some_spreads_are_not_stated_the_others_may_be_any() {
        keepsTheRules(Sheet.of(cut("leg", "33 ± 0.9"), cut("loin", "40 ± 0.1"), cut("neck", "27")));
    }

    @Test
    void the_whole_of_a_cut_does_not_vary() {
        keepsTheRules(Sheet.of(cut("leg", "100 ± 0")));
        breaks(Sheet.of(cut("leg", "100 ± 0.5")), TreeCode.SPREAD_TOO_LARGE);
    }

    @Test
    void a_spread_that_is_no_spread_is_told_once() {
        breaks(
                Sheet.of(cut("leg", "33 ± -0.9"), cut("loin", "67 ± 0.9")),
                TreeCode.NEGATIVE_SPREAD,
                TreeCode.LONE_SPREAD);
        breaks(Sheet.of(cut("leg", "33 ± 900"), cut("loin", "33.5"), cut("neck", "33.5")), TreeCode.SPREAD_TOO_LARGE);
    }
}
