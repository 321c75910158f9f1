package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.also;
import static dev.gambrel.tree.Sheet.boneless;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.rest;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.Sheep;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A part that could not be read silences what would follow from it, and nothing else. */
class DoubtTest {
    private static List<?> codes(Sheet sheet, TreePath... inDoubt) {
        return TreeRules.check(sheet.tree(), Limits.DEFAULT, Set.of(inDoubt)).stream()
                .map(Diagnostic::code)
                .toList();
    }

    private static Sheet twoLegs() {
        return Sheet.of(
                cut("leg", "50", cut("chump", "10"), cut("shank", "10")),
                cut("loin", "50", cut("eye", "10"), cut("tail", "10")));
    }

    @Test
    void the_cut_of_a_part_in_doubt_need_not_close() {
        assertEquals(List.of(TreeCode.SUM_NOT_100, TreeCode.SUM_NOT_100), codes(twoLegs()));
        assertEquals(List.of(TreeCode.SUM_NOT_100), codes(twoLegs(), Held.path("leg", "chump")));
        assertEquals(List.of(), codes(twoLegs(), Held.path("leg", "chump"), Held.path("loin", "eye")));
    }

    @Test
    void the_cuts_below_a_part_in_doubt_are_still_looked_at() {
        assertEquals(List.of(TreeCode.SUM_NOT_100, TreeCode.SUM_NOT_100), codes(twoLegs(), Held.path("leg")));
    }

    @Test
    void a_missing_share_beside_a_part_in_doubt_is_not_asked_for() {
        Sheet sheet = Sheet.of(cut("leg", ""), rest("mince"));
        assertEquals(List.of(TreeCode.SHARE_MISSING), codes(sheet));
        assertEquals(List.of(), codes(sheet, Held.path("leg")));
    }

    @Test
    void spreads_beside_a_part_in_doubt_may_be_any() {
        Sheet sheet = Sheet.of(cut("leg", "50 ± 2"), cut("loin", "50 ± 1"));
        assertEquals(List.of(TreeCode.IMPOSSIBLE_SPREAD), codes(sheet));
        assertEquals(List.of(), codes(sheet, Held.path("loin")));
    }

    @Test
    void a_second_share_beside_a_part_in_doubt_is_not_held_against_the_first() {
        Sheet sheet =
                Sheet.of(cut("leg", "50", also(cut("chump", "10"), "9", "carcass"), rest("mince")), rest("mince"));
        assertEquals(List.of(TreeCode.SHARE_CONTRADICTION), codes(sheet));
        assertEquals(List.of(), codes(sheet, Held.path("leg", "chump")));
        assertEquals(List.of(), codes(sheet, Held.path("leg")));
    }

    @Test
    void a_boneless_cut_with_a_part_in_doubt_may_have_lost_its_bone_there() {
        Sheet sheet = Sheet.of(boneless(cut("shank", "50", rest("mince"))), rest("mince"))
                .of(Sheep.sheep());
        assertEquals(List.of(TreeCode.BONE_LEFT_IN), codes(sheet));
        assertEquals(List.of(), codes(sheet, Held.path("shank", "unreadable line")));
    }

    @Test
    void doubt_about_something_that_is_not_there_changes_nothing() {
        assertEquals(2, codes(twoLegs(), Held.path("neck", "neck bones")).size());
    }
}
