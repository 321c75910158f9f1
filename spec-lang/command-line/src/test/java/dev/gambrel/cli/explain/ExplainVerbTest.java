package dev.gambrel.cli.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.diagnostic.Code;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExplainVerbTest {
    private static List<Code> codes() {
        return Codes.all();
    }

    @ParameterizedTest
    @ValueSource(strings = {"G0501", "g0501", "sum-not-100", "Sum-Not-100"})
    void a_finding_is_explained_by_its_number_or_its_name(String asked) {
        Run run = Run.of("explain", asked);
        assertEquals(ExitStatus.FINE, run.status());
        assertEquals("", run.err());
        assertTrue(run.out().startsWith("# G0501"), run.out());
    }

    @ParameterizedTest
    @MethodSource("codes")
    void every_finding_has_a_page_under_both_names(Code code) {
        Run run = Run.of("explain", code.id());
        assertTrue(run.out().startsWith("# " + code.id()), run.out());
        assertEquals(run, Run.of("explain", code.slug()));
    }

    @Test
    void a_finding_that_there_is_not_gets_the_nearest() {
        Run run = Run.of("explain", "sum-not-10");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("There is no finding called “sum-not-10”. Did you mean “sum-not-100”?\n"));
        assertTrue(Run.of("explain", "zzzzzz").err().startsWith("There is no finding called “zzzzzz”.\n"));
    }

    @Test
    void without_a_name_all_findings_are_listed_in_order() {
        Run run = Run.of("explain");
        assertEquals(ExitStatus.FINE, run.status());
        assertEquals(codes().size(), run.out().lines().count());
        assertEquals(run.out().lines().sorted().toList(), run.out().lines().toList());
        assertTrue(run.out().contains("G0501  sum-not-100\n"));
    }

    @Test
    void no_number_and_no_name_is_used_for_two_findings() {
        Set<String> used = new HashSet<>();
        for (Code code : codes()) {
            assertTrue(used.add(code.id()), code.id());
            assertTrue(used.add(code.slug()), code.slug());
        }
    }
}
