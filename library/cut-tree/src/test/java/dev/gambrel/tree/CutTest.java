package dev.gambrel.tree;

import static dev.gambrel.tree.Sheet.bone;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.loss;
import static dev.gambrel.tree.Sheet.name;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.Sheet.trim;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.tree.anatomy.PieceCount;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CutTest {
    @Test
    void a_cut_with_a_cut_or_a_rest_in_it_is_divided() {
        assertTrue(cut("leg", "33", cut("chump", "15")).isDivided());
        assertTrue(cut("leg", "33", rest("mince")).isDivided());
        assertTrue(cut("leg", "33", bone("femur", "7"), rest("mince")).isDivided());
    }

    @Test
    void a_cut_from_which_only_bones_trims_and_losses_come_is_the_cut_itself_trimmed() {
        assertFalse(cut("leg", "33").isDivided());
        assertFalse(cut("leg", "33", bone("femur", "7"), trim("fat", "4"), loss("saw", "0.5"))
                .isDivided());
    }

    @Test
    void left_and_right_are_two_and_a_neck_is_one() {
        assertEquals(1, PieceCount.ONE.perCarcass(2));
        assertEquals(2, PieceCount.TWO.perCarcass(1));
    }

    @Test
    void where_nothing_is_said_there_are_as_many_as_of_the_cut_above() {
        assertEquals(1, PieceCount.NOT_STATED.perCarcass(1));
        assertEquals(2, PieceCount.NOT_STATED.perCarcass(2));
    }

    @Test
    void a_rest_is_called_rest_and_has_no_share_of_its_own() {
        Part rest = rest("mince");
        assertEquals(name("rest"), rest.name());
        assertInstanceOf(Share.NotStated.class, rest.share());
    }

    @Test
    void a_cut_keeps_its_parts_whatever_becomes_of_the_list_they_came_in() {
        List<Part> parts = new ArrayList<>(List.of(rest("mince")));
        Cut leg = cut("leg", "33", parts.toArray(Part[]::new));
        parts.clear();
        assertEquals(1, leg.parts().size());
        assertThrows(UnsupportedOperationException.class, () -> leg.parts().clear());
    }
}
