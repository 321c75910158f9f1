package dev.gambrel.cli.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Json;
import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CatalogueVerbTest {
    @Test
    void the_species_are_listed_with_how_much_is_known_of_each() {
        Run run = Run.of("catalogue");
        assertEquals(ExitStatus.FINE, run.status());
        assertEquals("", run.err());
        assertEquals(
                List.of("sheep", "fallow deer", "red deer", "pig", "cattle"),
                run.out()
                        .lines()
                        .skip(1)
                        .limit(5)
                        .map(line -> line.substring(0, 14).strip())
                        .toList());
        assertEquals(
                "species         pieces   numbers  printed shares   sources",
                run.out().lines().findFirst().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"fallow deer", "Fallow Deer", "fallow"})
    void a_species_is_shown_as_a_tree_of_its_pieces(String name) {
        Run run = Run.of("catalogue", name);
        assertTrue(run.out().startsWith("""
                fallow deer, also fallow
                Ribs: 13. Vertebrae: cervical 7, thoracic 13, lumbar 6, sacral 4.

                haunch, two per carcass, also leg
                  rump, two per carcass, also chump
                  shank, two per carcass, also hind shin, shin
                  thick flank, two per carcass, also knuckle (AU, US)
                  topside, two per carcass, also inside (AU, US)
                  silverside, two per carcass, also outside (AU, US)
                    flat, two per carcass, also silverside flat
                """), run.out());
        assertTrue(run.out().contains("\nsources\n  FALLOWNZ, published: The carcass composition and meat quality"));
        assertEquals(run, Run.of(words("catalogue " + name)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"sheep|best end", "sheep|Best End of Neck", "sheep best end", "lamb|rack", "sheep|best|end"})
    void a_cut_is_told_by_any_name_with_quotation_marks_or_without(String asked) {
        Run run = Run.of(("catalogue|" + asked).split("\\|"));
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.out().startsWith("""
                best end, sheep
                  where it sits: carcass / fore-saddle / best end
                  how many: two per carcass
                  also called: best end of neck; rack
                what is in it
                  bones: chine bone (thoracic vertebrae; vertebrae thoracicae), feather bones (spinous processes; \
                processus spinosi), ribs (rib bones; costae), blade cartilage (cartilago scapulae)
                  muscles: longissimus thoracis (eye of the rack), spinalis, latissimus dorsi (cap of the rack)
                  glands: none named
                what print says of its weight
                  10 % of carcass                   IASRI
                  11 % of carcass                   Army lamb handbook
                  9.5 % of carcass                  Australian lamb guide
                numbers in published schemes
                  Handbook of Australian Meat 4930  Australian lamb guide
                  IMPS 204                          US lamb report
                sources, and how sure
                  anatomy of the sheep, memory: vertebral formula C7 T13 L6-7 S4"""), run.out());
        assertTrue(run.out().contains("  IASRI, published: Fabrication of lamb carcasses, agricultural e-course"));
    }

    @Test
    void a_name_of_two_pieces_shows_both_and_who_says_so() {
        String out = Run.of("catalogue", "beef", "sirloin").out();
        assertTrue(out.startsWith("“sirloin” means 2 pieces; who says so of which stands beside the name.\n"), out);
        assertTrue(out.contains("\nsirloin butt, cattle\n") && out.contains("\nstriploin, cattle\n"), out);
        assertTrue(out.contains("  beware: “sirloin” is also the sirloin butt (US)\n"), out);
        assertTrue(out.contains("  beware: “sirloin” is also the striploin (UK, Ireland)\n"), out);
    }

    @Test
    void what_is_not_known_is_said_to_be_not_known() {
        String out = Run.of("catalogue", "red deer", "flank").out();
        assertTrue(out.contains("what print says of its weight: nothing that the catalogue has\n"), out);
        assertTrue(out.contains("numbers in published schemes: none that the catalogue has\n"), out);
        assertTrue(out.contains("  glands: none named\n"), out);
    }

    @Test
    void a_page_ends_with_the_usual_cautions() {
        assertTrue(Run.of("catalogue", "cattle", "round").out().endsWith(Cautions.TEXT));
    }

    @Test
    void a_slip_gets_the_nearest_name() {
        Run cut = Run.of("catalogue", "sheep", "bst end");
        assertEquals(ExitStatus.WRONG_USAGE, cut.status());
        assertEquals("", cut.out());
        assertEquals(
                "The sheep of the catalogue has no piece “bst end”. Did you mean “best end”?"
                        + " All that it has: gambrel catalogue sheep\n→ See: gambrel catalogue --help\n",
                cut.err());
        Run species = Run.of("catalogue", "shep", "leg");
        assertEquals(ExitStatus.WRONG_USAGE, species.status());
        assertTrue(
                species.err().startsWith("The catalogue has no species “shep”. Did you mean “sheep”? It has: sheep,"));
    }

    @Test
    void what_was_asked_cannot_steer_the_terminal_and_is_no_name() {
        Run cut = Run.of("catalogue", "sheep", "leg\u001B[2J");
        assertEquals(ExitStatus.WRONG_USAGE, cut.status());
        assertFalse((cut.out() + cut.err()).contains("\u001B"));
        assertFalse(Run.of("catalogue", "\u202Epeehs").err().contains("\u202E"));
        assertEquals(
                ExitStatus.WRONG_USAGE,
                Run.of("catalogue", "sheep", "x".repeat(1_000)).status());
        assertEquals(
                ExitStatus.WRONG_USAGE, Run.of("catalogue", "x".repeat(1_000)).status());
        assertEquals(ExitStatus.WRONG_USAGE, Run.of("catalogue", "sheep/leg").status());
        assertEquals(Run.of("catalogue"), Run.of("catalogue", "  "));
    }

    @Test
    void a_form_that_there_is_not_is_wrong_usage() {
        Run run = Run.of("catalogue", "--as", "chart");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().startsWith("“chart” is not a form of output; there are text and json.\n"));
    }

    @Test
    void the_list_is_given_as_json() {
        Map<?, ?> json = json("catalogue", "--as", "json");
        assertEquals("gambrel catalogue", json.get("format"));
        assertEquals(5, ((List<?>) json.get("species")).size());
    }

    @Test
    void a_species_is_given_as_json() {
        Map<?, ?> json = json("catalogue", "pig", "--as", "json");
        assertEquals("pig", json.get("name"));
        assertEquals("{least=13, most=17}", json.get("ribs").toString());
        Map<?, ?> leg = (Map<?, ?>) ((List<?>) json.get("pieces")).get(0);
        assertEquals("leg", leg.get("name"));
        assertEquals("2", leg.get("perCarcass").toString());
        assertFalse(((List<?>) leg.get("pieces")).isEmpty());
    }

    @Test
    void a_cut_is_given_as_json_with_its_citations() {
        Map<?, ?> json = json("catalogue", "--as", "json", "sheep", "knuckle");
        assertEquals("knuckle", json.get("asked"));
        List<?> cuts = (List<?>) json.get("cuts");
        assertEquals(2, cuts.size());
        Map<?, ?> thickFlank = (Map<?, ?>) cuts.get(1);
        assertEquals(List.of("hind-saddle", "leg", "thick flank"), thickFlank.get("path"));
        assertEquals(
                "[{name=knuckle, regions=[UK], piece=shank}]",
                thickFlank.get("alsoMeans").toString());
        Map<?, ?> number = (Map<?, ?>) ((List<?>) thickFlank.get("numbers")).get(0);
        assertEquals("5072", number.get("number"));
        assertEquals("published", ((Map<?, ?>) ((List<?>) number.get("sources")).get(0)).get("kind"));
    }

    private static Map<?, ?> json(String... args) {
        return (Map<?, ?>) Json.parse(Run.of(args).out());
    }

    private static String[] words(String line) {
        return line.split(" ");
    }
}
