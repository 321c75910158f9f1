package dev.gambrel.cli.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckVerbTest {
    private static final String OPEN = Run.HOGGET.replace("rest -> mince", "cut loin 12 %");
    private static final String LONE = Run.HOGGET.replace("rest -> mince", "cut loin 67.0 %");

    private static final String ALLOWED =
            LONE.replace("per carcass", "per carcass {\n  allow lone-spread \"the loin is what the leg leaves\"\n}");

    private static final String LOINS = IntStream.rangeClosed(1, 60)
            .mapToObj(i -> "cut loin " + "x".repeat(i) + " 5 kg\n")
            .collect(Collectors.joining());

    @TempDir
    Path folder;

    private Run check(String text) {
        return Run.of("check", Run.write(folder, "hogget.cuts", text));
    }

    @Test
    void a_sheet_that_keeps_the_rules_is_fine() {
        Run run = check(Run.HOGGET);
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.out()
                .startsWith("Marram hogget, revision 3, for sheep\nChecked: 2 parts on 2 levels, the carcass counted"));
        assertTrue(run.out().endsWith("Findings: none.\n"));
        assertEquals("", run.err());
    }

    @Test
    void a_revision_says_what_it_replaces_from_when_and_why() {
        Run.write(folder, "hogget.cuts", Run.HOGGET);
        String revision = "language 1\nrevises \"hogget.cuts\"\n"
                + "specification \"Marram hogget\" revision 4 for sheep, replaces 3, in force from 1 October 2026,\n"
                + "  because \"leaner legs\"\n";
        Run run = Run.of("check", Run.write(folder, "hogget-4.cuts", revision));
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.out()
                .startsWith("Marram hogget, revision 4, for sheep\n"
                        + "Replaces revision 3, in force from 2026-10-01, because: leaner legs\nChecked: "));
    }

    @Test
    void an_error_is_a_finding() {
        Run run = check(OPEN);
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.out().startsWith("error G0501 (sum-not-100) in hogget.cuts, line "));
        assertTrue(run.out().contains("add up to 45.0 %, which is 55 points too little."));
        assertTrue(run.out().contains(": 1 error.\n→ More about a finding: gambrel explain G0501\n"));
    }

    @Test
    void a_warning_is_told_and_the_sheet_can_be_used() {
        Run run = check(LONE);
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.out().startsWith("warning G0505 (lone-spread)"));
        assertTrue(run.out().endsWith(": 1 warning.\n"));
    }

    @Test
    void a_warning_that_is_allowed_is_counted_and_shown_if_wanted() {
        String allowed = Run.write(folder, "allowed.cuts", ALLOWED);
        Run run = Run.of("check", allowed);
        assertTrue(run.out().startsWith("Marram hogget, revision 3"));
        assertTrue(run.out().endsWith("Findings: none; allowed with a reason: 1 warning.\n"), run.out());
        String shown = Run.of("check", "--allowed", allowed).out();
        assertTrue(
                shown.startsWith(
                        "Allowed with a reason:\n\nwarning G0505 (lone-spread) in allowed.cuts, line 7, leg\n"),
                shown);
        assertTrue(shown.contains("\n  Allowed, since: the loin is what the leg leaves\n"), shown);
        assertFalse(shown.contains("→"), "nothing is left to do about it");
    }

    @Test
    void a_warning_that_is_allowed_in_a_tree_of_json_is_shown_too() {
        String allowed = Run.write(folder, "allowed.cuts", ALLOWED);
        String json = Run.write(folder, "allowed.json", Run.of("tree", allowed).out());
        assertTrue(Run.of("check", "--allowed", json)
                .out()
                .startsWith("Allowed with a reason:\n\nwarning G0505 (lone-spread) at leg\n"));
    }

    @Test
    void a_file_that_is_not_there_could_not_be_read() {
        Run run = Run.of("check", folder.resolve("hoggit.cuts").toString());
        assertEquals(ExitStatus.COULD_NOT, run.status());
        assertTrue(run.out().contains("There is no specification file “hoggit.cuts” here."));
        assertEquals(
                ExitStatus.COULD_NOT,
                Run.of("check", folder.resolve("tree.json").toString()).status());
    }

    @Test
    void a_limit_that_is_hit_could_not_be_read() throws IOException {
        String vast = Run.write(folder, "vast.cuts", "// " + "x".repeat(1 << 20));
        assertEquals(ExitStatus.COULD_NOT, Run.of("check", vast).status());
        Path folderAsFile = Files.createDirectories(folder.resolve("folder.cuts"));
        assertEquals(
                ExitStatus.COULD_NOT, Run.of("check", folderAsFile.toString()).status());
    }

    @Test
    void a_limit_on_json_that_is_hit_could_not_be_read_either() throws IOException {
        String vast = Run.write(folder, "vast.json", "\"" + "x".repeat(1 << 20) + "\"");
        String deep = Run.write(folder, "deep.json", "[".repeat(1000));
        String broken = Run.write(folder, "broken.json", "{");
        assertEquals(ExitStatus.COULD_NOT, Run.of("check", vast).status());
        assertEquals(ExitStatus.COULD_NOT, Run.of("check", deep).status());
        assertEquals(ExitStatus.FINDINGS, Run.of("check", broken).status());
    }

    @Test
    void the_graver_of_several_files_counts() {
        String good = Run.write(folder, "good.cuts", Run.HOGGET);
        String open = Run.write(folder, "open.cuts", OPEN);
        String none = folder.resolve("none.cuts").toString();
        assertEquals(ExitStatus.FINE, Run.of("check", good, good).status());
        assertEquals(ExitStatus.FINDINGS, Run.of("check", open, good).status());
        assertEquals(ExitStatus.COULD_NOT, Run.of("check", none, open, good).status());
    }

    @Test
    void a_name_that_can_be_no_file_is_wrong_usage() {
        Run run = Run.of("check", "hog\0get.cuts");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("“hog\\u{0}get.cuts” cannot be the name of a file."));
    }

    @Test
    void a_tree_in_json_is_checked_by_the_same_rules() {
        String good = Run.write(folder, "good.cuts", Run.HOGGET);
        Run tree = Run.of("tree", good);
        String json = Run.write(folder, "tree.json", tree.out());
        assertEquals(ExitStatus.FINE, Run.of("check", json).status());
        String broken = Run.write(folder, "broken.json", tree.out().replace("33.0", "-33.0"));
        Run run = Run.of("check", broken);
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.out().contains("G0508"), run.out());
        assertEquals(
                ExitStatus.FINDINGS,
                Run.of("check", Run.write(folder, "no.json", "not json")).status());
    }

    @Test
    void fifty_findings_are_shown_and_the_rest_are_counted_unless_all_are_wanted() {
        String many = Run.write(folder, "many.cuts", Run.HOGGET + LOINS);
        Run run = Run.of("check", many);
        assertEquals(50, occurrences("error G", run.out()));
        assertTrue(run.out().contains("and 10 more findings."), run.out());
        assertEquals(60, occurrences("error G", Run.of("check", "--all", many).out()));
    }

    private static int occurrences(String what, String text) {
        return text.split(what, -1).length - 1;
    }

    @Test
    void colour_is_used_only_where_it_was_asked_for() {
        String open = Run.write(folder, "open.cuts", OPEN);
        assertFalse(Run.of("check", open).out().contains("\u001B"));
        Run painted = Run.inColour("check", open);
        assertTrue(painted.out().startsWith("\u001B[1;31merror G0501"));
        assertEquals(Run.of("check", open).out(), painted.out().replaceAll("\u001B\\[[0-9;]*m", ""));
        assertFalse(Run.inColour("check", "--json", open).out().contains("\u001B"));
    }

    @Test
    void the_same_file_gives_the_same_bytes() {
        assertEquals(check(OPEN), check(OPEN));
    }

    @Test
    void a_sheet_cannot_steer_the_terminal() {
        Run run = check(Run.HOGGET.replace("Marram hogget", "Marram \u001B[2J\u202Ehogget"));
        assertFalse(run.out().contains("\u001B") || run.out().contains("\u202E"), run.out());
    }
}
