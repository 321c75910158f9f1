package dev.gambrel.diagnostic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ResultTest {
    private static final Place FILE = new Place.InFile("hogget.cuts");
    private static final Diagnostic ERROR =
            Diagnostic.of(TestCode.SUM_NOT_100, FILE).with("cut", "leg").with("sum", "90 %");
    private static final Diagnostic WARNING =
            Diagnostic.of(TestCode.LONE_SPREAD, FILE).with("part", "chump");
    private static final Diagnostic NOTE = Diagnostic.of(TestCode.BY_HAND, FILE);

    @Test
    void a_value_may_come_with_warnings_and_notes() {
        Result<String> result = Result.of("tree", List.of(WARNING, NOTE));
        assertEquals(Optional.of("tree"), result.value());
        assertEquals("tree", result.orElseThrow());
        assertEquals(List.of(WARNING, NOTE), result.diagnostics());
    }

    @Test
    void beside_an_error_there_is_no_value() {
        assertThrows(IllegalArgumentException.class, () -> Result.of("tree", List.of(WARNING, ERROR)));
    }

    @Test
    void without_a_value_there_is_an_error_that_says_why() {
        assertThrows(IllegalArgumentException.class, () -> Result.failed(List.of()));
        assertThrows(IllegalArgumentException.class, () -> Result.failed(List.of(WARNING, NOTE)));
        assertEquals(Optional.empty(), Result.failed(List.of(ERROR)).value());
    }

    @Test
    void who_was_sure_of_the_value_is_told_the_first_error() {
        Result<String> failed = Result.failed(List.of(WARNING, ERROR));
        var thrown = assertThrows(IllegalStateException.class, failed::orElseThrow);
        assertEquals("The parts of the leg add up to 90 %.", thrown.getMessage());
    }

    @Test
    void only_an_error_is_an_error() {
        assertFalse(Result.hasError(List.of()));
        assertFalse(Result.hasError(List.of(WARNING, NOTE)));
        assertTrue(Result.hasError(List.of(NOTE, ERROR)));
    }

    @Test
    void the_findings_are_copied() {
        List<Diagnostic> findings = new ArrayList<>(List.of(NOTE));
        Result<String> result = Result.of("tree", findings);
        findings.clear();
        assertEquals(List.of(NOTE), result.diagnostics());
    }
}
