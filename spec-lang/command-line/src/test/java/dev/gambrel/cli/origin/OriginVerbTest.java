package dev.gambrel.cli.origin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Json;
import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A processor asks where a figure comes from, and is shown the line and what it rests on. */
class OriginVerbTest {
    private static final String SHEET = """
            language 1
            // a sheep and a book invented for this test
            specification "Marram leg" revision 2 for sheep
            carcass cold, skin off, 20 kg to 24 kg
            from warm to cold, loss chill shrink 2.0 % ± 0.4 %
            source house tests, measured "ten carcasses, invented for this test"
            stream mince, saleable
            stream bones, by-product

            loss drip 0.5 % ± 0.1 %
            cut leg, two per carcass, 33.0 % ± 0.9 %, source house tests {
              bone femur 7.4 % ± 0.4 % -> bones
              cut topside 20.5 % ± 0.9 %, 6.765 % of carcass {
                trim fat to at most 3 mm at any point 4.0 % ± 1.0 % -> mince
                portion steak 180 g ± 6 g, between 170 g and 190 g, remainder -> mince
              }
              loss drip 0.5 % ± 0.1 %
              rest -> mince
            }
            rest -> mince
            source book, published "an invented book, page 6"
            species sheep {
              ribs 13, source book
              piece leg, two per carcass {
                published 32 % of carcass, source book
                reference UNECE 4800 edition 2006
              }
            }
            """;

    private static final String WAYS = """
            language 1
            // a sheep and an equation invented for this test
            specification "Marram leg" revision 1 for sheep
            carcass cold, 20 kg to 24 kg
            grade season, summer, winter
            source trial, measured "ten carcasses, invented for this test"
            estimate leg share = 0.5 % per kg × cold weight + 22 %, source trial
            stream mince, saleable
            cut leg, two per carcass, estimated by leg share, pair matched within 60 g {
              score silverskin
              worked as steaks, as a rule {
                portion steak 180 g, at least 20 mm thick, thickness rules, packed 2 to a tray, remainder -> mince
              }
              worked as roast {
                portion roast, whole, tied 3 times
              }
            }
            rest -> mince
            species sheep
            """;

    @TempDir
    Path folder;

    private String sheet;

    @BeforeEach
    void write_the_sheet() {
        sheet = Run.write(folder, "leg.cuts", SHEET);
    }

    private String printed(String part) {
        Run run = Run.of("origin", sheet, part);
        assertEquals("", run.err());
        assertEquals(ExitStatus.FINE, run.status());
        return run.out();
    }

    @Test
    void a_cut_is_told_with_its_own_lines_and_with_what_print_says_of_the_piece() {
        assertEquals("""
                leg
                  name       leg.cuts, line 11  leg
                  share      leg.cuts, line 11  33.0 % ± 0.9 %
                                                house tests, measured: ten carcasses, invented for this test
                  pieces     leg.cuts, line 11  two per carcass

                leg / femur
                  name       leg.cuts, line 12  femur
                  share      leg.cuts, line 12  7.4 % ± 0.4 %
                                                no source stated
                  goes to    leg.cuts, line 12  bones

                leg / drip
                  name       leg.cuts, line 17  drip
                  share      leg.cuts, line 17  0.5 % ± 0.1 %
                                                no source stated

                leg / rest
                  name       leg.cuts, line 18  rest
                  goes to    leg.cuts, line 18  mince

                known of the leg of a sheep
                  name       leg.cuts, line 24  leg
                  published  leg.cuts, line 25  32 % of carcass, source book
                                                book, published: an invented book, page 6
                  number     leg.cuts, line 26  UNECE 4800 edition 2006
                                                no source stated
                """, printed("leg"));
    }

    @Test
    void trims_and_portions_are_told_with_their_limits() {
        assertEquals("""
                leg / topside
                  name          leg.cuts, line 13  topside
                  share         leg.cuts, line 13  20.5 % ± 0.9 %
                                                   no source stated
                  other share   leg.cuts, line 13  6.765 % of carcass
                                                   no source stated

                leg / topside / fat
                  name          leg.cuts, line 14  fat
                  share         leg.cuts, line 14  4.0 % ± 1.0 %
                                                   no source stated
                  fat           leg.cuts, line 14  to at most 3 mm at any point
                  goes to       leg.cuts, line 14  mince

                leg / topside / steak
                  name          leg.cuts, line 15  steak
                  target        leg.cuts, line 15  180 g ± 6 g
                  accepted      leg.cuts, line 15  between 170 g and 190 g
                  remainder to  leg.cuts, line 15  mince
                """, printed("Leg / TOPSIDE"));
    }

    @Test
    void ways_and_what_is_in_them_are_told_too() {
        String sheet = Run.write(folder, "ways.cuts", WAYS);
        assertEquals("""
                leg / steaks
                  name          ways.cuts, line 11  steaks
                  worked so     ways.cuts, line 11  as a rule

                leg / steaks / steak
                  name          ways.cuts, line 12  steak
                  target        ways.cuts, line 12  180 g
                  accepted      ways.cuts, line 12  at least 20 mm thick
                  rules         ways.cuts, line 12  thickness rules
                  packed        ways.cuts, line 12  packed 2 to a tray
                  remainder to  ways.cuts, line 12  mince
                """, Run.of("origin", sheet, "steaks").out());
        assertEquals("""
                leg / roast / roast
                  name     ways.cuts, line 15  roast
                  number   ways.cuts, line 15  whole
                  binding  ways.cuts, line 15  tied 3 times
                """, Run.of("origin", sheet, "roast / roast").out());
    }

    @Test
    void a_cut_is_told_with_its_ways_and_what_the_bench_is_told() {
        String sheet = Run.write(folder, "ways.cuts", WAYS);
        assertEquals("""
                leg
                  name       ways.cuts, line 9   leg
                  share      ways.cuts, line 9   estimated by leg share
                  estimate   ways.cuts, line 7   leg share = 0.5 % per kg × cold weight + 22 %, source trial
                                                 trial, measured: ten carcasses, invented for this test
                  pieces     ways.cuts, line 9   two per carcass
                  pair       ways.cuts, line 9   pair matched within 60 g
                  tissue     ways.cuts, line 10  silverskin

                leg / steaks
                  name       ways.cuts, line 11  steaks
                  worked so  ways.cuts, line 11  as a rule

                leg / roast
                  name       ways.cuts, line 14  roast
                """, Run.of("origin", sheet, "leg").out());
    }

    @Test
    void the_carcass_is_told_with_its_grades_and_estimates() {
        String sheet = Run.write(folder, "ways.cuts", WAYS);
        assertTrue(
                Run.of("origin", sheet).out().contains("""
                          grade          ways.cuts, line 5   season, summer, winter
                          estimate       ways.cuts, line 7   leg share = 0.5 % per kg × cold weight + 22 %, source trial
                                                             trial, measured: ten carcasses, invented for this test
                        """),
                Run.of("origin", sheet).out());
    }

    @Test
    void without_a_part_the_carcass_is_told() {
        String carcass = Run.of("origin", sheet).out();
        assertEquals(printed("carcass"), carcass);
        assertTrue(carcass.startsWith("""
                carcass
                  specification  leg.cuts, line 3   "Marram leg" revision 2 for sheep
                  weighed        leg.cuts, line 4   cold
                  dressing       leg.cuts, line 4   skin off
                  band           leg.cuts, line 4   20 kg to 24 kg
                  on the way     leg.cuts, line 5   loss chill shrink 2.0 % ± 0.4 %
                                                    no source stated

                streams
                  stream         leg.cuts, line 7   mince, saleable
                  stream         leg.cuts, line 8   bones, by-product

                drip
                """), carcass);
        assertTrue(carcass.endsWith("""

                known of the sheep
                  ribs           leg.cuts, line 23  13, source book
                                                    book, published: an invented book, page 6
                """), carcass);
    }

    @Test
    void all_parts_of_a_name_are_told_unless_it_is_said_which() {
        assertEquals("""
                drip
                  name   leg.cuts, line 10  drip
                  share  leg.cuts, line 10  0.5 % ± 0.1 %
                                            no source stated

                leg / drip
                  name   leg.cuts, line 17  drip
                  share  leg.cuts, line 17  0.5 % ± 0.1 %
                                            no source stated
                """, printed("drip"));
        assertTrue(printed("leg / drip").startsWith("leg / drip\n"));
        assertEquals(printed("drip").substring(0, printed("drip").indexOf("\n\n") + 1), printed("carcass / drip"));
    }

    @Test
    void what_the_catalogue_says_is_told_as_the_catalogue_s() {
        String sheet = Run.write(
                folder,
                "sheep.cuts",
                "language 1\nuse \"catalogue:sheep\"\nspecification \"Legs\" revision 1 for sheep\ncarcass cold\n"
                        + "stream mince, saleable\ncut leg, two per carcass, 33 %\nrest -> mince\n");
        String told = Run.of("origin", sheet, "leg").out();
        assertTrue(
                told.matches("(?s).*\n  published  catalogue:sheep, line [0-9]+  32 % of carcass, source IASRI\n"
                        + " +IASRI, published: Fabrication of lamb carcasses.*"),
                told);
    }

    @Test
    void what_a_revision_changed_is_told_with_what_stood_before() {
        String revised = Run.write(folder, "revised.cuts", """
                language 1
                revises "leg.cuts"
                specification "Marram leg" revision 3 for sheep
                stream mince, saleable, lean 85 % visual
                cut leg {
                  cut topside, boneless {
                    portion steak 200 g ± 6 g, between 190 g and 210 g
                  }
                }
                """);
        assertEquals("""
                leg / topside / steak
                  name          leg.cuts, line 15     steak
                  target        revised.cuts, line 7  200 g ± 6 g
                  before        leg.cuts, line 15     180 g ± 6 g
                  accepted      revised.cuts, line 7  between 190 g and 210 g
                  before        leg.cuts, line 15     between 170 g and 190 g
                  remainder to  leg.cuts, line 15     mince
                """, Run.of("origin", revised, "steak").out());
        String carcass = Run.of("origin", revised).out().replaceAll(" +", " ");
        assertTrue(
                carcass.contains(" stream revised.cuts, line 4 saleable, lean 85 % visual\n"
                        + " before leg.cuts, line 7 mince, saleable\n"),
                carcass);
    }

    @Test
    void a_part_that_is_not_there_is_asked_about() {
        Run run = Run.of("origin", sheet, "leg / topsde");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertEquals(
                "There is no part called “leg / topsde”; did you mean “leg / topside”?\n→ See: gambrel origin --help\n",
                run.err());
        assertEquals("", run.out());
        assertTrue(Run.of("origin", sheet, "kidney")
                .err()
                .startsWith("There is no part called “kidney” in this specification.\n"));
        assertEquals(
                ExitStatus.WRONG_USAGE, Run.of("origin", sheet, "leg//topside").status());
        assertEquals(ExitStatus.WRONG_USAGE, Run.of("origin", sheet, "").status());
    }

    @Test
    void programs_read_it_as_json() {
        Run run = Run.of("origin", sheet, "leg / femur", "--as", "json");
        Map<?, ?> section = (Map<?, ?>) ((List<?>) ((Map<?, ?>) Json.parse(run.out())).get("sections")).get(0);
        assertEquals("leg / femur", section.get("of"));
        Map<?, ?> share = (Map<?, ?>) ((List<?>) section.get("values")).get(1);
        assertEquals("share", share.get("what"));
        assertEquals("7.4 % ± 0.4 %", share.get("words"));
        assertEquals("leg.cuts", share.get("file"));
        assertEquals(BigDecimal.valueOf(12), share.get("line"));
        assertEquals(BigDecimal.valueOf(14), share.get("column"));
        assertEquals("  bone femur 7.4 % ± 0.4 % -> bones", share.get("text"));
        assertEquals(List.of(), share.get("sources"));
        Map<?, ?> leg = (Map<?, ?>) ((List<?>) ((Map<?, ?>) Json.parse(
                                Run.of("origin", sheet, "leg", "--as", "json").out()))
                        .get("sections"))
                .get(0);
        Map<?, ?> cited = (Map<?, ?>) ((List<?>) leg.get("values")).get(1);
        assertEquals(
                List.of(Map.of(
                        "name",
                        "house tests",
                        "kind",
                        "measured",
                        "citation",
                        "ten carcasses, invented for this test")),
                cited.get("sources"));
    }

    @Test
    void of_a_sheet_with_errors_nothing_is_told_but_the_errors() {
        String open = Run.write(folder, "open.cuts", Run.HOGGET.replace("rest -> mince", "cut loin 12 %"));
        Run run = Run.of("origin", open, "leg");
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("error G0501"));
    }

    @Test
    void what_cannot_be_asked_is_wrong_usage() {
        String json = Run.write(folder, "leg.json", Run.of("tree", sheet).out());
        assertEquals(ExitStatus.WRONG_USAGE, Run.of("origin", json, "leg").status());
        assertEquals(
                ExitStatus.WRONG_USAGE,
                Run.of("origin", sheet, "leg", "--as", "csv").status());
        assertEquals(ExitStatus.WRONG_USAGE, Run.of("origin").status());
    }

    @Test
    void a_sheet_cannot_steer_the_terminal() {
        String steering = Run.write(
                folder, "steering.cuts", Run.HOGGET.replace("rest -> mince", "note \"\u202Etop\"\nrest -> mince"));
        assertFalse(Run.of("origin", steering).out().contains("\u202E"));
    }
}
