package dev.gambrel.compiler.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CatalogueSpeciesTest {
    private final CatalogueSpecies sheep =
            CatalogueSpecies.named(TradeName.of("sheep")).orElseThrow();

    private static List<TradeName> names() {
        return Catalogue.species();
    }

    @ParameterizedTest
    @MethodSource("names")
    void every_species_of_the_catalogue_can_be_read(TradeName name) {
        CatalogueSpecies species = CatalogueSpecies.named(name).orElseThrow();
        assertEquals(name, species.species().name());
        assertTrue(species.pieces().size() > 10);
    }

    /** Vertebral formulas, from memory; ribs are as many as thoracic vertebrae. */
    @ParameterizedTest
    @CsvSource({
        "sheep, 13, 7, 13, 6 to 7, 4",
        "fallow deer, 13, 7, 13, 6, 4",
        "red deer, 13, 7, 13, 6, 4",
        "pig, 13 to 17, 7, 13 to 17, 5 to 7, 4",
        "cattle, 13, 7, 13, 6, 5"
    })
    void the_spine_is_that_of_the_animal(
            String name, String ribs, String neck, String chest, String loin, String sacrum) {
        var species = CatalogueSpecies.named(TradeName.of(name)).orElseThrow().species();
        assertEquals(ribs, species.ribs().toString());
        assertEquals(
                List.of(neck, chest, loin, sacrum),
                species.vertebrae().values().stream().map(Object::toString).toList());
    }

    @ParameterizedTest
    @CsvSource({"lamb, sheep", "HOGGET, sheep", "fallow, fallow deer", "pork, pig", "beef, cattle", "sheep, sheep"})
    void a_species_is_found_by_what_it_is_called_anywhere(String name, String species) {
        assertEquals(
                species,
                CatalogueSpecies.called(TradeName.of(name))
                        .orElseThrow()
                        .species()
                        .name()
                        .text());
    }

    @Test
    void of_what_the_catalogue_lacks_nothing_is_said() {
        assertTrue(CatalogueSpecies.called(TradeName.of("goat")).isEmpty());
        assertTrue(CatalogueSpecies.named(TradeName.of("lamb")).isEmpty());
        assertEquals(List.of(), sheep.cutsCalled(TradeName.of("brisket")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"best end", "Best  End", "best end of neck", "RACK"})
    void a_cut_is_found_by_any_of_its_names(String name) {
        CatalogueCut cut = onlyCut(name);
        assertEquals("best end", cut.piece().name().text());
        assertEquals(List.of(TradeName.of("fore-saddle"), TradeName.of("best end")), cut.path());
    }

    @Test
    void a_cut_knows_where_it_sits() {
        assertEquals(
                List.of("hind-saddle", "leg", "silverside", "salmon cut"),
                onlyCut("eye of round").path().stream().map(TradeName::text).toList());
    }

    @Test
    void a_cut_contains_what_lies_in_its_smaller_pieces_too() {
        List<String> bones = onlyCut("leg").contents().bones().stream()
                .map(bone -> bone.name().text())
                .toList();
        assertEquals(List.of("aitch bone", "femur", "sacrum", "tibia", "tarsus", "patella"), bones);
    }

    @Test
    void a_bone_has_all_its_names_wherever_it_is_named() {
        Piece.Structure ribs = onlyCut("breast").contents().bones().get(1);
        assertEquals("ribs", ribs.name().text());
        assertEquals(
                List.of("rib bones", "costae"),
                ribs.otherNames().stream()
                        .map(OtherName::name)
                        .map(TradeName::text)
                        .toList());
    }

    @Test
    void figures_and_numbers_come_with_their_sources_and_how_sure_they_are() {
        CatalogueCut rack = onlyCut("rack");
        assertEquals("10 %", rack.shares().get(0).value().expected().toString());
        Source source = rack.shares().get(0).sources().get(0);
        assertEquals(Source.Kind.PUBLISHED, source.kind());
        assertTrue(source.citation().contains("Indian Agricultural Statistics Research Institute"));
        assertEquals("4930", rack.numbers().get(0).value().number());
        assertEquals(
                List.of("anatomy of the sheep"),
                sheep.anatomySources().stream().map(s -> s.name().text()).toList());
    }

    @Test
    void a_name_of_two_pieces_gives_both() {
        assertEquals(
                List.of("shank", "thick flank"),
                sheep.cutsCalled(TradeName.of("knuckle")).stream()
                        .map(cut -> cut.piece().name().text())
                        .toList());
        assertEquals(
                List.of(new CatalogueCut.SameWord(
                        new OtherName(TradeName.of("knuckle"), List.of("AU", "US")), TradeName.of("thick flank"))),
                onlyCut("shank").sameWords());
    }

    @Test
    void a_slip_gets_the_nearest_name() {
        assertEquals(Optional.of(TradeName.of("topside")), sheep.nearestCut("topsid"));
        assertEquals(Optional.empty(), sheep.nearestCut("carburettor"));
    }

    private CatalogueCut onlyCut(String name) {
        List<CatalogueCut> cuts = sheep.cutsCalled(TradeName.of(name));
        assertEquals(1, cuts.size());
        return cuts.get(0);
    }
}
