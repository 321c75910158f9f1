package dev.gambrel.cli.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Json;
import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckAsJsonTest {
    private static final String WRONG = "// \uD83E\uDD69\n" + Run.HOGGET.replace("33.0 %", "33.0 kg");

    @TempDir
    Path folder;

    private List<?> findings(String text) {
        Run run = Run.of("check", "--json", Run.write(folder, "hogget.cuts", text));
        assertEquals("", run.err());
        assertTrue(run.out().endsWith("\n"));
        return (List<?>) Json.parse(run.out());
    }

    private Map<?, ?> only(String text) {
        List<?> findings = findings(text);
        assertEquals(1, findings.size());
        return (Map<?, ?>) findings.get(0);
    }

    @Test
    void a_sheet_without_findings_gives_an_empty_list() {
        assertEquals(List.of(), findings(Run.HOGGET));
    }

    @Test
    void a_finding_gives_its_kind_and_its_sentence() {
        Map<?, ?> finding = only(WRONG);
        assertEquals("G0403", finding.get("code"));
        assertEquals("wrong-dimension", finding.get("slug"));
        assertEquals("error", finding.get("severity"));
        assertEquals("33.0 kg is a weight; a share is wanted here.", finding.get("message"));
    }

    @Test
    void a_place_is_told_in_offsets_from_nought_and_lines_and_columns_from_one() {
        Map<?, ?> place = (Map<?, ?>) only(WRONG).get("place");
        int start = WRONG.indexOf("33.0 kg");
        assertEquals("hogget.cuts", place.get("file"));
        assertEquals(number(start), place.get("start"));
        assertEquals(number(start + "33.0 kg".length()), place.get("end"));
        assertEquals(number(8), place.get("line"));
        assertEquals(number(9), place.get("column"));
        assertEquals(number(8), place.get("endLine"));
        assertEquals(number(16), place.get("endColumn"));
    }

    private static java.math.BigDecimal number(int value) {
        return java.math.BigDecimal.valueOf(value);
    }

    @Test
    void a_finding_of_the_tree_gives_its_path_as_well() {
        Map<?, ?> place =
                (Map<?, ?>) only(Run.HOGGET.replace("33.0 %", "133.0 %")).get("place");
        assertEquals(List.of("leg"), place.get("path"));
        assertEquals("share", place.get("aspect"));
        assertEquals(number(7), place.get("line"));
    }

    @Test
    void values_are_given_for_programs_so_that_none_need_read_the_sentence() {
        Map<?, ?> arguments =
                (Map<?, ?>) only(Run.HOGGET.replace("33.0 %", "133.0 %")).get("arguments");
        assertFalse(arguments.isEmpty());
        assertTrue(arguments.get("share").toString().contains("133.0"), arguments.toString());
    }

    @Test
    void what_to_do_is_given_too() {
        assertFalse(((List<?>) only(WRONG).get("help")).isEmpty());
    }

    @Test
    void a_warning_that_is_allowed_stands_last_with_its_reason_if_wanted() {
        String allowed = Run.HOGGET
                .replace("per carcass", "per carcass {\n  allow lone-spread \"the loin is what the leg leaves\"\n}")
                .replace("rest -> mince", "cut loin 67.0 %");
        assertEquals(List.of(), findings(allowed));
        Run run = Run.of("check", "--json", "--allowed", Run.write(folder, "hogget.cuts", allowed));
        Map<?, ?> finding = (Map<?, ?>) ((List<?>) Json.parse(run.out())).get(0);
        assertEquals("lone-spread", finding.get("slug"));
        assertEquals("the loin is what the leg leaves", finding.get("allowed"));
        assertEquals(number(7), ((Map<?, ?>) finding.get("place")).get("line"));
    }

    @Test
    void a_file_that_cannot_be_read_is_a_finding_in_json_too() {
        Run run = Run.of("check", "--json", folder.resolve("none.cuts").toString());
        assertEquals(ExitStatus.COULD_NOT, run.status());
        Map<?, ?> finding = (Map<?, ?>) ((List<?>) Json.parse(run.out())).get(0);
        assertEquals("G0108", finding.get("code"));
        assertEquals(Map.of("file", "none.cuts"), finding.get("place"));
    }

    @Test
    void findings_of_several_files_stand_in_one_list() {
        String one = Run.write(folder, "one.cuts", WRONG);
        String two = Run.write(folder, "two.cuts", WRONG);
        Run run = Run.of("check", "--json", one, two);
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals(2, ((List<?>) Json.parse(run.out())).size());
    }
}
