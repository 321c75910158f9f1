package dev.gambrel.conformance.published;

import static dev.gambrel.conformance.published.WeighedCarcass.assertPrinted;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fabrication of lamb carcasses, agricultural e-course, Indian Agricultural Statistics Research Institute. */
class LambSaddlesTest {
    private static final String FILE = "15-lamb-saddles.cuts";
    private static final String SOURCE = "LAMBIASRI, Fabrication of lamb carcasses";

    private final WeighedCarcass carcass = PublishedTable.of(FILE).weighed("100", Unit.KILOGRAM, Basis.COLD);

    @ParameterizedTest
    @CsvSource(textBlock = """
            fore-saddle, 53
            fore-saddle / rack, 10
            fore-saddle / shoulder, 25
            fore-saddle / neck, 4
            fore-saddle / fore shank, 6
            fore-saddle / breast, 8
            hind-saddle, 47
            hind-saddle / leg, 32
            hind-saddle / loin, 10
            hind-saddle / flank, 3
            hind-saddle / suet and kidney, 2
            """)
    void each_piece_has_its_printed_share_of_the_carcass(String piece, String percent) {
        assertPrinted(percent, carcass.percentOfCarcass(piece), SOURCE);
        assertPrinted(percent, carcass.weight(piece), SOURCE);
    }

    @Test
    void the_table_lies_within_what_the_catalogue_of_sheep_has_in_print() {
        assertEquals(
                List.of(), PublishedTable.check(FILE, PublishedTable.text(FILE)).diagnostics());
    }
}
