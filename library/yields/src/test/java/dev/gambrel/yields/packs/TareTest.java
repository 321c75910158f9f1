package dev.gambrel.yields.packs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import org.junit.jupiter.api.Test;

class TareTest {
    private static final Tare TRAY = new Tare(Packs.grams("12.4"));

    @Test
    void a_pack_is_what_is_left_without_its_wrapping() {
        assertEquals("198.8 g", TRAY.net(Packs.grams("211.2")).orElseThrow().toString());
        assertEquals(
                "211.2 g", Tare.NONE.net(Packs.grams("211.2")).orElseThrow().toString());
    }

    /** 8 oz are 226.796185 g exactly (international yard and pound agreement of 1959). */
    @Test
    void units_may_differ_and_nothing_is_lost() {
        Quantity net = TRAY.net(Quantity.of("8", Unit.OUNCE)).orElseThrow();
        assertEquals(0, Packs.grams("214.396185").compareTo(net));
    }

    @Test
    void a_pack_that_is_wrapping_alone_is_none() {
        assertTrue(TRAY.net(Packs.grams("12.4")).isEmpty());
        assertTrue(TRAY.net(Packs.grams("9")).isEmpty());
        assertTrue(Tare.NONE.net(Packs.grams("0")).isEmpty());
        assertTrue(TRAY.net(Quantity.of("200", Unit.MILLIMETRE)).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> new Tare(Packs.grams("-1")));
        assertThrows(IllegalArgumentException.class, () -> new Tare(Quantity.of("1", Unit.PERCENT)));
    }
}
