package dev.gambrel.diagnostic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A file cannot make the list of findings long, nor hide an error behind a thousand warnings. */
class FirstFindingsTest {
    private enum Found implements Code {
        WARNING(Severity.WARNING),
        ERROR(Severity.ERROR);

        private final Kind kind;

        Found(Severity severity) {
            this.kind = new Kind("G9998", "found", severity, "Something was found.");
        }

        @Override
        public Kind kind() {
            return kind;
        }
    }

    private static Diagnostic finding(Found kind) {
        return Diagnostic.of(kind, new Place.InFile("hogget.cuts"));
    }

    @Test
    void a_thousand_are_kept_and_no_more() {
        FirstFindings findings = new FirstFindings();
        IntStream.range(0, 5_000).forEach(i -> findings.accept(finding(Found.ERROR)));
        assertEquals(FirstFindings.MOST, findings.list().size());
    }

    @Test
    void the_first_error_is_kept_however_late_it_comes() {
        FirstFindings findings = new FirstFindings();
        IntStream.range(0, 5_000).forEach(i -> findings.accept(finding(Found.WARNING)));
        IntStream.range(0, 5_000).forEach(i -> findings.accept(finding(Found.ERROR)));
        assertEquals(FirstFindings.MOST + 1, findings.list().size());
        assertTrue(Result.hasError(findings.list()));
    }
}
