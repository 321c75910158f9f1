package dev.gambrel.cli.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Json;
import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareVerbTest {
    @TempDir
    private Path folder;

    private String old;

    @BeforeEach
    void write() {
        old = Run.write(folder, "old.cuts", Run.HOGGET);
    }

    private Run against(String words, String instead, String... options) {
        String later = Run.write(folder, "new.cuts", Run.HOGGET.replace(words, instead));
        String[] args = new String[options.length + 3];
        args[0] = "compare";
        args[1] = old;
        args[2] = later;
        System.arraycopy(options, 0, args, 3, options.length);
        return Run.of(args);
    }

    @Test
    void a_specification_does_not_differ_from_itself() {
        Run run = Run.of("compare", old, old);
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.out().contains("Nothing differs in meaning or in words."), run.out());
    }

    @Test
    void both_places_are_told() {
        Run run = against("33.0 %", "34.0 %");
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.out().contains("""
                  leg, share
                    was 33.0 % ± 0.9 %  [old.cuts, line 7]
                    is  34.0 % ± 0.9 %  [new.cuts, line 7]
                    rest makes up for it
                """), run.out());
        assertTrue(run.out().contains("leg             7.26   7.48       +0.22"), run.out());
    }

    @Test
    void other_words_alone_end_well() {
        Run run = against("revision 3", "revision 4");
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.out().contains("1 difference: rewords 1"), run.out());
    }

    @Test
    void what_is_accepted_ends_well_and_nothing_else_does() {
        assertEquals(
                ExitStatus.FINE,
                against("20 kg to 24 kg", "18 kg to 24 kg", "--accept", "loosens, adds")
                        .status());
        assertEquals(
                ExitStatus.FINDINGS,
                against("20 kg to 24 kg", "21 kg to 24 kg", "--accept", "loosens, adds")
                        .status());
    }

    @Test
    void an_effect_that_there_is_not_is_wrong_usage() {
        Run run = against("33.0 %", "34.0 %", "--accept", "helps");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("“helps” is no effect of a change"), run.err());
    }

    @Test
    void bands_that_differ_are_said_beside_the_figures() {
        Run run = against("20 kg to 24 kg", "22 kg to 26 kg");
        assertTrue(run.out().contains("Expected of a carcass of 23.0 kg, weighed cold\n"), run.out());
        assertTrue(
                run.out().contains("The weight bands differ: 20 kg to 24 kg before, 22 kg to 26 kg after."), run.out());
    }

    @Test
    void without_a_common_carcass_one_is_asked_for() {
        Run run = against("20 kg to 24 kg", "25 kg to 28 kg");
        assertTrue(run.out().contains("Name one with --weight."), run.out());
        Run named = against("20 kg to 24 kg", "25 kg to 28 kg", "--weight", "25 kg cold");
        assertTrue(named.out().contains("Expected of a carcass of 25 kg, weighed cold"), named.out());
        assertTrue(named.err().contains("20 kg to 24 kg"), named.err());
    }

    @Test
    void a_tree_from_a_stranger_is_compared_with_a_specification() {
        Run tree = Run.of("tree", old);
        String sent = Run.write(folder, "sent.json", tree.out().replace("\"mean\": 33.0", "\"mean\": 34.0"));
        Run run = Run.of("compare", old, sent);
        assertTrue(run.out().contains("leg, share"), run.out());
        assertTrue(run.out().contains("sent.json]"), run.out());
    }

    @Test
    void a_file_with_errors_is_not_compared() {
        Run run = against("rest -> mince", "");
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals("", run.out());
    }

    @Test
    void a_file_that_is_not_there_could_not_be_read() {
        Run run = Run.of("compare", old, folder.resolve("none.cuts").toString());
        assertEquals(ExitStatus.COULD_NOT, run.status());
    }

    @Test
    void one_file_alone_is_wrong_usage() {
        assertEquals(ExitStatus.WRONG_USAGE, Run.of("compare", old).status());
    }

    @Test
    void text_from_a_stranger_steers_no_terminal() {
        String hostile = Run.of("tree", old).out().replace("Marram hogget", "Marram\\u001b[2J\\u202ehogget");
        Run run = Run.of("compare", old, Run.write(folder, "sent.json", hostile));
        assertTrue(run.out().contains("Marram\\u{1B}[2J\\u{202E}hogget"), run.out());
        assertFalse(run.out().contains("\u001b"));
    }

    @Test
    void the_json_says_the_same() {
        Run run = against("33.0 %", "34.0 %", "--as", "json");
        Map<?, ?> written = (Map<?, ?>) Json.parse(run.out());
        Map<?, ?> change = (Map<?, ?>) ((List<?>) written.get("changes")).get(0);
        assertEquals("alters figures", change.get("effect"));
        assertEquals("share", change.get("aspect"));
        assertEquals(List.of("leg"), change.get("path"));
        assertEquals("34.0 % ± 0.9 %", ((Map<?, ?>) change.get("is")).get("words"));
        assertEquals("new.cuts", ((Map<?, ?>) change.get("is")).get("file"));
    }

    @Test
    void a_cut_under_another_name_is_asked_about() {
        Run run = against("cut leg 33.0 %", "cut haunch 33.0 %");
        assertTrue(
                run.out()
                        .contains("Renamed? leg is gone and haunch is new, and both are the same share of what they are"
                                + " cut from.\n"),
                run.out());
    }

    @Test
    void of_very_many_differences_the_first_are_shown_and_the_others_counted() {
        StringBuilder notes = new StringBuilder();
        for (int i = 0; i < 60; i++) {
            notes.append("note \"words ").append(i).append("\"\n");
        }
        assertTrue(
                against("rest -> mince", notes + "rest -> mince").out().contains("  and 10 more; --all shows them\n"));
        assertFalse(
                against("rest -> mince", notes + "rest -> mince", "--all").out().contains("--all shows them"));
    }

    @Test
    void the_cautions_are_printed() {
        assertTrue(against("33.0 %", "34.0 %").out().contains("glove and gauntlet"));
    }
}
