package dev.gambrel.conformance.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import org.junit.jupiter.api.Test;

/** The carcass composition and meat quality of male fallow deer, MAgrSc thesis, Massey University 1985. */
class FallowJointsTest {
    private static final String FILE = "23-fallow-joints.cuts";

    private final Diagnostic finding = onlyFinding();

    private static Diagnostic onlyFinding() {
        var found = PublishedTable.check(FILE, PublishedTable.text(FILE)).diagnostics();
        assertEquals(1, found.size());
        return found.get(0);
    }

    @Test
    void the_printed_joints_make_100_7_per_cent() {
        // FALLOWNZ, means of 24 bucks: 12.6 + 15.4 + 17.8 + 15.5 + 39.4.
        assertEquals("sum-not-100", finding.code().slug());
        assertEquals("100.7 %", PublishedTable.argument("sum", finding));
        assertEquals("0.7 points", PublishedTable.argument("gap", finding));
        assertEquals("much", PublishedTable.argument("way", finding));
    }

    @Test
    void the_running_total_is_shown() {
        String notes = String.join("\n", finding.notes());
        for (String total : new String[] {"12.6", "28.0", "45.8", "61.3", "100.7"}) {
            assertTrue(notes.contains(total), notes);
        }
    }

    @Test
    void the_source_itself_is_said_not_to_close() {
        assertTrue(
                finding.notes().stream()
                        .anyMatch(note -> note.contains("FALLOWNZ")
                                && note.contains("does not close")
                                && note.contains("MAgrSc thesis, Massey University 1985")),
                finding.notes().toString());
    }

    @Test
    void figures_scaled_to_100_per_cent_are_offered_and_not_taken() {
        // 100 / 100.7 of each: 12.512, 15.293, 17.676, 15.392, 39.126.
        assertTrue(
                finding.help()
                        .contains("Or scale all of them to 100 %:"
                                + " neck 12.512, flank 15.293, shoulder 17.676, saddle 15.392, haunch 39.126."),
                finding.help().toString());
        assertTrue(finding.fixes().isEmpty());
    }
}
