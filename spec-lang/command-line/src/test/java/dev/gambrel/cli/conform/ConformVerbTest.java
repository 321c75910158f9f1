package dev.gambrel.cli.conform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Json;
import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConformVerbTest {
    private static final String HOUSE = """
            language 1
            species deer
            stream dice, saleable, lean 95 % visual
            stream bin, waste
            specification "Marram topside" revision 1 for deer
            carcass cold, 9 kg to 11 kg
            keep at most 4 °C
            age between 5 days and 10 days
            pack in vacuum bag
            cut topside 11.447 % ± 0.7651 %, one per carcass {
              trim fat to at most 3 mm at any point 1 % ± 0.1 % -> bin
              remove silverskin 1 % ± 0.1 % -> bin
              portion steak 177 g ± 6 g, between 165 g and 190 g, remainder -> dice
            }
            rest -> bin
            """;

    private static final String BUYER = """
            language 1
            species deer
            requirement "Topsides for Harbour Table" revision 2 for deer
            cut topside {
              weight between 1.00 kg and 1.30 kg
              trim fat to at most 3 mm at any point and at most 2 mm on average
              remove silverskin
              portion steak, between 160 g and 180 g
              keep at most 2 °C
              age at least 7 days
              pack in vacuum bag
              claim farmed
            }
            cut dice {
              lean at least 95 % visual
            }
            """;

    @TempDir
    private Path folder;

    private Run conform(String house, String buyer, String... options) {
        return held(Run.write(folder, "house.cuts", house), Run.write(folder, "buyer.cuts", buyer), options);
    }

    private static Run held(String house, String buyer, String... options) {
        List<String> args = new ArrayList<>(List.of("conform", house, "--to", buyer));
        args.addAll(List.of(options));
        return Run.of(args.toArray(String[]::new));
    }

    /**
     * One piece of 1.1218 kg ± 0.075 kg: the carcass of 10 kg gives 11.447 % ± 0.7651 % of it. Shares of the normal distribution,
     * and 180 g less 1.959964 times 6 g, worked out apart.
     */
    @Test
    void a_topside_is_answered_clause_by_clause() {
        Run run = conform(HOUSE, BUYER, "--carcass", "10 kg cold");
        assertEquals(ExitStatus.DOES_NOT_CONFORM, run.status());
        String out = run.out();
        for (String row : List.of(
                "meets       fat at any point   at most 3 mm            at most 3 mm            0 mm at the top",
                "not stated  fat on average     at most 2 mm            at most 3 mm            -",
                "meets       tissue             silverskin removed      silverskin removed      -",
                "not stated  weight of a piece  1.00 kg to 1.30 kg      nothing                 -",
                "fails       temperature        at most 2 °C            at most 4 °C            -2 °C at the top",
                "fails       age                at least 7 days         5 days to 10 days       -2 days at the low",
                "meets       pack               in vacuum bag           in vacuum bag           -",
                "not stated  claim              farmed                  nothing                 -",
                "fails       weight of a piece  160 g to 180 g          165 g to 190 g          -10 g at the top",
                "meets       lean               at least 95 %, visual   at least 95 %, visual   0 % at the low end")) {
            assertTrue(out.contains(row), row + "\n" + out);
        }
        String flowing = out.replaceAll("\\s+", " ");
        assertTrue(flowing.contains("93.91 % inside, 5.22 % light, 0.88 % heavy."), out);
        assertTrue(flowing.contains("68.92 % inside, 0.23 % light, 30.85 % heavy."), out);
        assertTrue(flowing.contains("The mean would have to be at most 168.24 g for 97.5 % to be under 180 g."), out);
        assertTrue(out.contains("buyer: buyer.cuts:9; house: house.cuts:7 (G2211)"), out);
        assertTrue(out.contains("4 meet, 3 fail, 3 not stated\nOverall: does not conform.\n"), out);
        assertTrue(out.contains("no answer here is legal advice"), out);
        assertTrue(out.lines()
                .takeWhile(line -> !line.startsWith("This compares"))
                .allMatch(line -> line.length() <= 100));
    }

    @Test
    void with_what_fails_mended_and_silences_left_it_is_not_shown() {
        String mended = HOUSE.replace("at most 4 °C", "at most 2 °C")
                .replace("5 days", "7 days")
                .replace("177 g ± 6 g, between 165 g and 190 g", "170 g ± 4 g, between 160 g and 180 g");
        Run run = conform(mended, BUYER);
        assertEquals(ExitStatus.NOT_SHOWN, run.status());
        assertTrue(run.out().contains("7 meet, 0 fail, 3 not stated\nOverall: not shown to conform.\n"), run.out());
    }

    @Test
    void pounds_compare_exactly() {
        String buyer = """
                language 1
                species deer
                requirement "Topsides" revision 1 for deer
                cut topside {
                  weight at most 2.9 lb
                }
                """;
        // 2.9 × 0.45359237 kg = 1.315417873 kg.
        String held = "cut topside 11.447 % ± 0.7651 %, one per carcass {\n  weight at most %s kg\n";
        String cut = "cut topside 11.447 % ± 0.7651 %, one per carcass {\n";
        Run meets = conform(HOUSE.replace(cut, held.replace("%s", "1.315417873")), buyer);
        assertEquals(ExitStatus.FINE, meets.status(), meets.out());
        Run fails = conform(HOUSE.replace(cut, held.replace("%s", "1.315417874")), buyer);
        assertEquals(ExitStatus.DOES_NOT_CONFORM, fails.status(), fails.out());
    }

    @Test
    void trees_in_json_give_the_same_answer_with_lines_of_the_json() {
        String house = json("house.json", HOUSE);
        String buyer = json("buyer.json", BUYER);
        Run run = held(house, buyer, "--carcass", "10 kg cold");
        assertEquals(ExitStatus.DOES_NOT_CONFORM, run.status(), run.err());
        assertTrue(run.out().contains("4 meet, 3 fail, 3 not stated"), run.out());
        assertTrue(run.out().matches("(?s).*buyer: buyer.json:\\d+; house: house.json:\\d+ \\(G2211\\).*"), run.out());
    }

    private String json(String name, String text) {
        Run tree = Run.of("tree", Run.write(folder, name.replace(".json", ".cuts"), text));
        return Run.write(folder, name, tree.out());
    }

    @Test
    void a_page_to_be_signed_is_well_formed_and_holds_no_script() throws Exception {
        String sly = "<script>alert(1)</script> & <b onload=x>";
        Path page = folder.resolve("answer.html");
        Run run = conform(HOUSE, BUYER.replace("Topsides for Harbour Table", sly), "--html", page.toString());
        assertEquals(ExitStatus.DOES_NOT_CONFORM, run.status());
        String html = Files.readString(page);
        assertFalse(html.contains("<script") || html.contains("<b "), html);
        assertTrue(html.startsWith("<!DOCTYPE html>") && html.contains("<meta charset=\"UTF-8\"/>"), html);
        for (String wanted :
                List.of("does not conform", "Signature", "The buyer", "buyer.cuts:9; house: house.cuts:7")) {
            assertTrue(html.contains(wanted), wanted);
        }
        var document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
        assertTrue(document.getElementsByTagName("p").item(1).getTextContent().contains(sly));
        assertEquals(3 + 1, document.getElementsByTagName("table").getLength());
    }

    @Test
    void a_page_is_never_written_over_what_was_read() throws IOException {
        Run run = conform(HOUSE, BUYER, "--html", folder.resolve("buyer.cuts").toString());
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertEquals(BUYER, Files.readString(folder.resolve("buyer.cuts")));
        Path link = Files.createSymbolicLink(folder.resolve("link.html"), folder.resolve("buyer.cuts"));
        assertEquals(
                ExitStatus.WRONG_USAGE,
                conform(HOUSE, BUYER, "--html", link.toString()).status());
        assertEquals(BUYER, Files.readString(folder.resolve("buyer.cuts")));
    }

    @Test
    void a_spreadsheet_gets_a_row_for_each_clause_and_no_formula() {
        Run run = conform(HOUSE, BUYER.replace("claim farmed", "claim \"=1+2\""), "--as", "csv");
        assertEquals(11, run.out().lines().count(), run.out());
        assertTrue(run.out().contains(",'=1+2,"), run.out());
        assertFalse(run.out().contains(",=") || run.out().contains(",-"), run.out());
    }

    @Test
    void a_program_gets_all_of_it() {
        Run run = conform(HOUSE, BUYER, "--carcass", "10 kg cold", "--as", "json");
        Map<?, ?> answer = (Map<?, ?>) Json.parse(run.out());
        assertEquals("does not conform", answer.get("overall"));
        Map<?, ?> steak = (Map<?, ?>) ((List<?>) answer.get("products")).get(1);
        Map<?, ?> clause = (Map<?, ?>) ((List<?>) steak.get("clauses")).get(0);
        assertEquals("fails", clause.get("verdict"));
        assertEquals("high", ((Map<?, ?>) clause.get("margin")).get("end"));
        Map<?, ?> expected = (Map<?, ?>) ((List<?>) clause.get("expected")).get(0);
        assertEquals(0.3085, ((Number) expected.get("heavy")).doubleValue(), 0.00005);
    }

    @Test
    void a_text_with_errors_gets_its_findings_and_no_answer() {
        Run run = conform(HOUSE, BUYER.replace("at most 2 °C", "at most 2 kg"));
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().contains("buyer.cuts"), run.err());
    }

    @Test
    void what_is_meant_can_be_said() {
        String buyer = BUYER.replace("cut topside", "cut haunch joint");
        assertTrue(conform(HOUSE, buyer).out().contains("haunch joint, matched to nothing"));
        Run run = conform(HOUSE, buyer, "--match", "haunch joint = topside", "--carcass", "10 kg cold");
        assertTrue(run.out().contains("4 meet, 3 fail, 3 not stated"), run.out());
        assertEquals(
                ExitStatus.WRONG_USAGE,
                conform(HOUSE, buyer, "--match", "haunch joint").status());
        assertEquals(
                ExitStatus.FINDINGS,
                conform(HOUSE, buyer, "--match", "haunch joint = rump").status());
    }

    @Test
    void what_is_checked_of_a_requirement_are_its_clauses() {
        Run run = Run.of("check", Run.write(folder, "buyer.cuts", BUYER));
        assertTrue(run.out().contains("Checked: a buyer's requirement of 10 clauses on 2 cuts"), run.out());
    }
}
