package dev.gambrel.tree;

import static dev.gambrel.tree.Sheet.name;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CutTreeTest {
    private static Quantity kilograms(String amount) {
        return Quantity.of(amount, Unit.KILOGRAM);
    }

    @Test
    void streams_and_sources_are_found_by_any_writing_of_their_names() {
        CutTree tree = Sheet.of().citing("House Tests", Source.Kind.MEASURED).tree();
        assertEquals(name("mince"), tree.stream(name("MINCE")).orElseThrow().name());
        assertEquals(
                Source.Kind.MEASURED,
                tree.source(name("house  tests")).orElseThrow().kind());
        assertEquals(Optional.empty(), tree.stream(name("render")));
        assertEquals(Optional.empty(), tree.source(name("hearsay")));
    }

    @Test
    void both_ends_belong_to_a_weight_band() {
        var band = new WeightBand.Stated(kilograms("20"), kilograms("24"));
        assertTrue(band.holds(kilograms("20")) && band.holds(kilograms("22.4")) && band.holds(kilograms("24.0")));
        assertFalse(band.holds(kilograms("19.999")) || band.holds(kilograms("24.001")));
    }

    /** Worked scene 8 of the design: 47.4 lb is 21.500278 kg, inside 20 to 24 kg; 47.4 kg is not. */
    @Test
    void a_band_in_kilograms_holds_a_weight_in_pounds() {
        var band = new WeightBand.Stated(kilograms("20"), kilograms("24"));
        assertTrue(band.holds(Quantity.of("47.4", Unit.POUND)));
        assertFalse(band.holds(kilograms("47.4")));
    }

    @ParameterizedTest
    @CsvSource({
        "live, LIVE",
        "in skin, IN_SKIN",
        "larder, IN_SKIN",
        "Warm, WARM",
        "hot, WARM",
        "COLD, COLD",
        "chilled, COLD"
    })
    void a_basis_is_known_by_the_words_of_the_trade(String written, Basis basis) {
        assertEquals(Optional.of(basis), Basis.of(written));
    }

    @Test
    void a_carcass_goes_from_live_to_cold() {
        assertEquals(
                List.of("live", "in skin", "warm", "cold"),
                List.of(Basis.values()).stream().map(Basis::words).toList());
        assertEquals(Optional.empty(), Basis.of("frozen"));
    }

    @Test
    void regions_of_the_spine_run_from_head_to_tail() {
        assertEquals(
                List.of("cervical", "thoracic", "lumbar", "sacral", "caudal"),
                List.of(SpineRegion.values()).stream().map(SpineRegion::words).toList());
        assertEquals(Optional.of(SpineRegion.LUMBAR), SpineRegion.of("Lumbar"));
        assertEquals(Optional.empty(), SpineRegion.of("loin"));
    }

    @Test
    void points_of_the_skeleton_are_printed_in_words() {
        assertEquals("rib 6", new SkeletonPoint.Rib(6).toString());
        assertEquals("last rib", new SkeletonPoint.LastRib().toString());
        assertEquals("lumbar vertebra 6", new SkeletonPoint.Vertebra(SpineRegion.LUMBAR, 6).toString());
        assertEquals("last lumbar vertebra", new SkeletonPoint.LastVertebra(SpineRegion.LUMBAR).toString());
    }

    @Test
    void a_count_that_differs_between_animals_is_printed_as_a_range() {
        assertEquals("6 to 7", new AnatomicalCount(6, 7).toString());
        assertEquals("13", new AnatomicalCount(13, 13).toString());
        assertFalse(AnatomicalCount.NOT_STATED.isStated());
        assertTrue(new AnatomicalCount(13, 13).isStated());
    }

    @Test
    void of_an_unknown_species_nothing_but_the_name_is_known() {
        Species goat = Species.unknown(name("goat"));
        assertEquals(name("goat"), goat.name());
        assertTrue(goat.pieces().isEmpty()
                && goat.vertebrae().isEmpty()
                && !goat.ribs().isStated());
    }

    @Test
    void the_spine_of_a_species_is_kept_in_order_and_cannot_be_changed() {
        AnatomicalCount seven = new AnatomicalCount(7, 7);
        Species sheep = new Species(
                name("sheep"),
                List.of(),
                seven,
                Map.of(SpineRegion.SACRAL, seven, SpineRegion.CERVICAL, seven),
                List.of());
        assertEquals(
                List.of(SpineRegion.CERVICAL, SpineRegion.SACRAL),
                List.copyOf(sheep.vertebrae().keySet()));
        assertThrows(
                UnsupportedOperationException.class, () -> sheep.vertebrae().clear());
    }
}
