package dev.gambrel.compiler.origin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compiled;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.Position;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class OriginsTest {
    private static final String LEG = """
            source house tests, measured "ten carcasses, invented for this test"
            source book, published "an invented book, page 6"
            from warm to cold, loss chill shrink 2 % ± 0.4 %, source book
            note "hang first"
            cut leg, two per carcass,
              33.0 % ± 0.9 %, source house tests, boneless, also haunch (north) {
              reference UNECE 4800 edition 2006, source book
              separate by saw at the stifle joint
              trim fat to at most 5 mm on average and at most 8 mm at any point 4 % -> mince
            }
            rest -> mince
            """;

    private final Origins origins = origins(Compiled.HEAD + LEG);

    private static Origins origins(String text) {
        return Compiled.text(text).orElseThrow().origins();
    }

    private static TreePath path(String... names) {
        TreePath path = TreePath.ROOT;
        for (String name : names) {
            path = path.then(TradeName.of(name));
        }
        return path;
    }

    private List<String> words(Aspect aspect, String... path) {
        return origins.all(path(path), aspect).stream().map(Origin::words).toList();
    }

    @Test
    void a_share_comes_from_its_words_on_their_line_and_rests_on_its_source() {
        Origin share = origins.of(path("leg"), Aspect.SHARE).orElseThrow();
        assertEquals("33.0 % ± 0.9 %", share.words());
        assertEquals("hogget.cuts", share.file());
        assertEquals(new Position(12, 3), share.position());
        assertEquals("  33.0 % ± 0.9 %, source house tests, boneless, also haunch (north) {", share.line());
        assertEquals(
                List.of(new Source(
                        TradeName.of("house tests"), Source.Kind.MEASURED, "ten carcasses, invented for this test")),
                share.sources());
        assertEquals(List.of(), share.revised());
        assertFalse(share.isFromCatalogue());
    }

    @Test
    void only_figures_rest_on_sources() {
        Origin boneless = origins.of(path("leg"), Aspect.BONE_STATE).orElseThrow();
        assertEquals("boneless", boneless.words());
        assertEquals(List.of(), boneless.sources());
    }

    @Test
    void each_line_in_the_braces_of_a_cut_is_found_with_what_it_says() {
        assertEquals(List.of("UNECE 4800 edition 2006, source book"), words(Aspect.REFERENCE, "Leg"));
        assertEquals(List.of("by saw at the stifle joint"), words(Aspect.SEPARATION, "leg"));
        assertEquals(List.of("also haunch (north)"), words(Aspect.OTHER_NAME, "leg"));
        assertEquals(List.of("two per carcass"), words(Aspect.COUNT, "leg"));
        assertEquals(
                List.of("to at most 5 mm on average", "and at most 8 mm at any point"),
                words(Aspect.LIMIT, "leg", "fat"));
        assertEquals(List.of("mince"), words(Aspect.STREAM, "leg", "fat"));
    }

    @Test
    void what_is_not_stated_comes_from_nowhere() {
        assertEquals(Optional.empty(), origins.of(path("rest"), Aspect.SHARE));
        assertEquals(Optional.empty(), origins.of(path("leg"), Aspect.STREAM));
        assertEquals(Optional.empty(), origins.of(path("lge"), Aspect.NAME));
    }

    @Test
    void the_carcass_and_what_is_declared_at_the_top_are_found_too() {
        assertEquals(List.of("\"Marram hogget\" revision 3 for sheep"), words(Aspect.TITLE));
        assertEquals(List.of("cold"), words(Aspect.NAME));
        assertEquals(List.of("20 kg to 24 kg"), words(Aspect.BAND));
        assertEquals(List.of("mince, saleable", "bones, by-product"), words(Aspect.STREAM));
        assertEquals(List.of("loss chill shrink 2 % ± 0.4 %"), words(Aspect.STEP));
        assertEquals(List.of("\"hang first\""), words(Aspect.NOTE));
        assertEquals(
                "an invented book, page 6",
                origins.of(TreePath.ROOT, Aspect.STEP)
                        .orElseThrow()
                        .sources()
                        .get(0)
                        .citation());
    }

    @Test
    void a_portion_has_a_target_a_range_and_a_home_for_its_remainder() {
        Origins steak = origins(Compiled.HEAD + """
                cut leg 33 % {
                  portion steak 180 g ± 6 g, between 170 g and 190 g, remainder -> mince
                }
                rest -> mince
                """);
        TreePath path = path("leg", "steak");
        assertEquals("180 g ± 6 g", steak.of(path, Aspect.SHARE).orElseThrow().words());
        assertEquals(
                "between 170 g and 190 g",
                steak.of(path, Aspect.LIMIT).orElseThrow().words());
        assertEquals("mince", steak.of(path, Aspect.STREAM).orElseThrow().words());
    }

    @Test
    void a_share_that_is_written_of_something_else_is_found_beside_the_first() {
        Origins both = origins(Compiled.HEAD + "cut leg 33 % {\ncut shank 13.0 %, 4.29 % of carcass\nrest -> mince\n}\n"
                + "rest -> mince\n");
        TreePath shank = path("leg", "shank");
        assertEquals("13.0 %", both.of(shank, Aspect.SHARE).orElseThrow().words());
        assertEquals(
                "4.29 % of carcass",
                both.of(shank, Aspect.DERIVED_SHARE).orElseThrow().words());
    }

    @Test
    void an_estimated_share_comes_from_its_equation_in_the_catalogue() {
        Origins retail = origins(Compiled.HEAD + """
                use "catalogue:lamb equations"
                cut all cuts, estimated by lamb retail cuts
                rest -> mince
                """);
        Origin estimate = retail.of(path("all cuts"), Aspect.ESTIMATE).orElseThrow();
        assertTrue(estimate.isFromCatalogue());
        assertTrue(estimate.words().startsWith("lamb retail cuts = "), estimate.words());
        assertEquals(
                TradeName.of("Purdue lamb slopes"), estimate.sources().get(0).name());
        assertEquals(
                List.of("estimated by lamb retail cuts"),
                retail.all(path("all cuts"), Aspect.SHARE).stream()
                        .map(Origin::words)
                        .toList());
        assertEquals(List.of(), retail.all(path("rest"), Aspect.ESTIMATE));
    }

    @Test
    void what_is_known_of_the_animal_comes_from_the_catalogue() {
        Origins sheep = new SpecCompiler()
                .compile(
                        new SourceText(
                                "hogget.cuts",
                                "language 1\nuse \"catalogue:sheep\"\nspecification \"Legs\" revision 1 for sheep\n"
                                        + "carcass cold\nstream mince, saleable\ncut leg, two per carcass, 33 %\n"
                                        + "rest -> mince\n"),
                        Sources.none())
                .orElseThrow()
                .origins();
        SpeciesOrigins.PieceOrigin leg =
                sheep.species().pieces(TradeName.of("gigot")).get(0);
        assertEquals(TradeName.of("leg"), leg.name());
        assertTrue(leg.origin().isFromCatalogue());
        assertEquals("catalogue:sheep", leg.published().get(0).file());
        assertEquals("32 % of carcass, source IASRI", leg.published().get(0).words());
        assertEquals(
                TradeName.of("IASRI"), leg.published().get(0).sources().get(0).name());
        assertTrue(sheep.species().ribs().orElseThrow().words().startsWith("13"));
        assertTrue(sheep.species()
                .vertebrae(SpineRegion.LUMBAR)
                .orElseThrow()
                .words()
                .startsWith("lumbar 6 to 7"));
        assertEquals(Optional.empty(), origins.species().ribs());
    }

    @Test
    void a_value_from_a_file_that_is_used_is_told_with_that_file() {
        Origins used = new SpecCompiler()
                .compile(
                        new SourceText("main.cuts", Compiled.HEAD + "use \"leg.cuts\"\nrest -> mince\n"),
                        Compiled.files(Map.of("leg.cuts", "language 1\ncut leg 33 %\n")))
                .orElseThrow()
                .origins();
        Origin share = used.of(path("leg"), Aspect.SHARE).orElseThrow();
        assertEquals("leg.cuts", share.file());
        assertEquals(2, share.position().line());
    }

    @Test
    void a_place_that_is_written_nowhere_stays_as_it_is() {
        Place nowhere = new Place.InTree(path("lge"), Aspect.SHARE);
        assertEquals(nowhere, origins.written(nowhere));
    }
}
