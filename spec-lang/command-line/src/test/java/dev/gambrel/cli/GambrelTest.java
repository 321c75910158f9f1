package dev.gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.terminal.ExitStatus;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class GambrelTest {
    private static List<String> verbs() {
        return Verbs.names();
    }

    /** 0 fine, 1 findings, 2 wrong usage, 3 could not read or a limit was hit; of a comparison 4 not shown, 5 does not conform. */
    @Test
    void each_way_to_end_has_a_number_of_its_own() {
        assertEquals(0, ExitStatus.FINE.number());
        assertEquals(1, ExitStatus.FINDINGS.number());
        assertEquals(2, ExitStatus.WRONG_USAGE.number());
        assertEquals(3, ExitStatus.COULD_NOT.number());
        assertEquals(4, ExitStatus.NOT_SHOWN.number());
        assertEquals(5, ExitStatus.DOES_NOT_CONFORM.number());
    }

    @Test
    void the_graver_of_two_answers_counts() {
        assertEquals(ExitStatus.FINDINGS, ExitStatus.FINE.and(ExitStatus.FINDINGS));
        assertEquals(ExitStatus.COULD_NOT, ExitStatus.COULD_NOT.and(ExitStatus.FINDINGS));
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void every_verb_shows_its_help(String verb) {
        Run run = Run.of(verb, "--help");
        assertEquals(ExitStatus.FINE, run.status());
        assertEquals("", run.err());
        assertTrue(run.out().startsWith("Usage: gambrel " + verb + " "), run.out());
        assertEquals(run, Run.of(verb, "-h"));
    }

    @Test
    void an_option_that_is_misspelt_is_asked_about() {
        Run run = Run.of("yield", "hogget.cuts", "--weigth", "22 kg cold");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().startsWith("There is no “--weigth”; is --weight meant?\n"), run.err());
    }

    /** What describes an option is a pattern: of a percent sign that is not doubled picocli warns on its own. */
    @ParameterizedTest
    @MethodSource("verbs")
    void help_is_shown_without_a_warning_of_the_library(String verb) {
        PrintStream before = System.err;
        ByteArrayOutputStream aside = new ByteArrayOutputStream();
        System.setErr(new PrintStream(aside, true, StandardCharsets.UTF_8));
        try {
            Run.of(verb, "--help");
        } finally {
            System.setErr(before);
        }
        assertEquals("", aside.toString(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h", "help"})
    void the_program_shows_all_that_it_does(String asked) {
        Run run = Run.of(asked);
        assertEquals(ExitStatus.FINE, run.status());
        verbs().forEach(verb -> assertTrue(run.out().contains("  " + verb + " "), verb));
        assertTrue(run.out().contains("Exit status: 0 fine, 1 errors found, 2 wrong usage, 3 could not read"));
    }

    @Test
    void the_usual_cautions_are_given() {
        String help = Run.of("--help").out();
        assertTrue(help.contains("Figures are estimates"));
        assertTrue(help.contains("risk material"));
        assertTrue(help.contains("local rules"));
    }

    @Test
    void without_a_word_the_program_shows_its_help_but_was_not_used_rightly() {
        Run run = Run.of();
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.out().startsWith("Usage: gambrel"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--version", "-V"})
    void the_version_is_told(String asked) {
        assertEquals(new Run(ExitStatus.FINE, "gambrel 0.1.0\n", ""), Run.of(asked));
    }

    @Test
    void what_the_program_does_not_do_is_wrong_usage() {
        Run run = Run.of("weigh", "hogget.cuts");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertEquals("There is no “weigh” to be done.\n→ See: gambrel --help\n", run.err());
        assertEquals("", run.out());
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void an_option_that_a_verb_does_not_know_is_wrong_usage(String verb) {
        Run run = Run.of(verb, "--colour=red");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().endsWith("→ See: gambrel " + verb + " --help\n"), run.err());
        assertEquals(2, run.err().lines().count());
        assertEquals("", run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "yield", "tree"})
    void a_verb_that_reads_a_file_needs_one(String verb) {
        Run run = Run.of(verb);
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertFalse(run.err().isEmpty());
    }

    @Test
    void a_word_on_the_command_line_cannot_steer_the_terminal() {
        Run run = Run.of("\u001B[2J");
        assertEquals("There is no “\\u{1B}[2J” to be done.\n→ See: gambrel --help\n", run.err());
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void completion_knows_every_verb(String verb) {
        Run run = Run.of("completion");
        assertEquals(ExitStatus.FINE, run.status());
        assertEquals("", run.err());
        assertTrue(run.out().contains("_picocli_gambrel_" + verb), verb);
    }

    @Test
    void completion_knows_the_options() {
        String script = Run.of("completion").out();
        for (String option :
                List.of("--weight", "--unit", "--decimals", "--as", "--tree", "--out", "--json", "--all")) {
            assertTrue(script.contains("'" + option + "'"), option);
        }
    }
}
