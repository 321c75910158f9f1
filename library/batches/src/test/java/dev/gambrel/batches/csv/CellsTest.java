package dev.gambrel.batches.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class CellsTest {
    private static List<String> cells(String row) {
        Cells cells = new Cells(',', 20);
        assertTrue(cells.split(row.toCharArray(), 0, row.length()), row);
        List<String> found = new ArrayList<>();
        for (int i = 0; i < cells.count(); i++) {
            found.add(cells.string(i));
        }
        return found;
    }

    private static boolean fits(String row) {
        return new Cells(',', 20).split(row.toCharArray(), 0, row.length());
    }

    @Example
    void cells_stand_between_separators() {
        assertEquals(List.of("ewe 7", "21.4", ""), cells("ewe 7,21.4,"));
        assertEquals(List.of("", "", ""), cells(",,"));
        assertEquals(List.of("21,4", "say \"no\"", ""), cells("\"21,4\",\"say \"\"no\"\"\",\"\""));
        assertEquals(List.of("\"", "x", "\"\""), cells("\"\"\"\",x,\"\"\"\"\"\""));
    }

    @Example
    void a_quotation_mark_that_is_not_closed_does_not_fit() {
        assertFalse(fits("\"21.4"));
        assertFalse(fits("\"21.4\"kg,x"));
        assertFalse(fits("12\" rule,x"));
        assertFalse(fits("\""));
        assertFalse(fits("\"a\"\""));
    }

    @Provide
    Arbitrary<List<String>> rows() {
        return Arbitraries.strings()
                .withChars(",\"ab ;\u00e9")
                .ofMaxLength(6)
                .list()
                .ofMinSize(1)
                .ofMaxSize(8);
    }

    @Property(tries = 1000)
    void what_was_put_in_quotation_marks_comes_out(@ForAll("rows") List<String> row) {
        String written = String.join(
                ",",
                row.stream().map(cell -> '"' + cell.replace("\"", "\"\"") + '"').toList());
        assertEquals(row, cells(written));
    }

    @Property(tries = 1000)
    void no_row_is_too_much(@ForAll String row) {
        fits(row);
    }
}
