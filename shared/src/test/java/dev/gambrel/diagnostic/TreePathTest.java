package dev.gambrel.diagnostic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.text.TradeName;
import org.junit.jupiter.api.Test;

class TreePathTest {
    private static final TreePath STEAK = path("leg", "topside", "steak");

    private static TreePath path(String... names) {
        TreePath path = TreePath.ROOT;
        for (String name : names) {
            path = path.then(TradeName.of(name));
        }
        return path;
    }

    @Test
    void the_address_of_a_cut_is_read_from_the_carcass_down() {
        assertEquals("leg / topside / steak", STEAK.toString());
        assertEquals("steak", STEAK.last());
    }

    @Test
    void the_carcass_is_its_own_address_and_its_own_parent() {
        assertEquals("carcass", TreePath.ROOT.toString());
        assertEquals("carcass", TreePath.ROOT.last());
        assertEquals(TreePath.ROOT, TreePath.ROOT.parent());
    }

    @Test
    void what_a_part_leaves_is_one_step_up() {
        assertEquals(path("leg", "topside"), STEAK.parent());
        assertEquals(TreePath.ROOT, path("leg").parent());
    }

    @Test
    void a_part_lies_within_itself_and_whatever_it_is_cut_from() {
        assertTrue(STEAK.isWithin(TreePath.ROOT));
        assertTrue(STEAK.isWithin(path("LEG", "Topside")));
        assertTrue(STEAK.isWithin(STEAK));
        assertFalse(path("leg").isWithin(STEAK));
        assertFalse(STEAK.isWithin(path("loin")));
    }
}
