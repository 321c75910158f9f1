package dev.gambrel.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.portions.PortionYield;
import dev.gambrel.yields.working.Order;
import dev.gambrel.yields.working.Working;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarramSpecificationsTest {
    @ParameterizedTest
    @ValueSource(strings = {"hogget.cuts", "hogget-harbour-table.cuts", "fallow.cuts"})
    void nothing_is_found_wrong_or_doubtful(String file) {
        List<String> found = Marram.check(file).diagnostics().stream()
                .map(Diagnostic::message)
                .toList();
        assertEquals(List.of(), found);
    }

    @ParameterizedTest
    @ValueSource(strings = {"hogget.cuts", "hogget-harbour-table.cuts", "fallow.cuts"})
    void every_carcass_of_the_band_gives_as_much_as_it_weighs(String file) {
        CutTree tree = Marram.tree(file);
        WeightBand.Stated band = (WeightBand.Stated) tree.carcass().band();
        for (Quantity weight : List.of(band.low(), band.high())) {
            var result = Yields.of(tree).forCarcass(new CarcassWeight(weight, Basis.COLD));
            assertEquals(List.of(), result.diagnostics());
            double sum = Stream.of(Outcome.values())
                    .mapToDouble(outcome -> result.orElseThrow().total(outcome).mean())
                    .sum();
            assertEquals(weight.value(), sum, 1e-9);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"hogget.cuts", "hogget-harbour-table.cuts", "fallow.cuts"})
    void every_line_has_a_spread_and_a_home(String file) {
        ExpectedYields yields = Yields.of(Marram.tree(file)).forTypicalCarcass().orElseThrow();
        for (YieldRow row : yields.rows()) {
            assertTrue(row.allPieces().orElseThrow().range95().isPresent(), row.name());
        }
        assertEquals(0, yields.total(Outcome.NOT_STATED).mean());
    }

    @ParameterizedTest
    @ValueSource(strings = {"hogget.cuts", "hogget-harbour-table.cuts", "fallow.cuts"})
    void house_figures_say_that_they_are_invented(String file) {
        List<Source> measured = Marram.tree(file).sources().stream()
                .filter(source -> source.kind() == Source.Kind.MEASURED)
                .toList();
        assertEquals(1, measured.size());
        assertTrue(measured.get(0).citation().startsWith("invented demonstration data"));
    }

    @Test
    void the_hogget_is_cut_into_sixty_odd_parts_on_three_levels_below_the_carcass() {
        CutTree hogget = Marram.tree("hogget.cuts");
        assertEquals(62, Marram.nodes(hogget.parts()));
        assertEquals(3, Marram.levels(hogget.parts()));
    }

    @Test
    void the_fallow_deer_is_cut_into_forty_odd_parts_on_four_levels_below_the_carcass() {
        CutTree fallow = Marram.tree("fallow.cuts");
        assertEquals(48, Marram.nodes(fallow.parts()));
        assertEquals(4, Marram.levels(fallow.parts()));
    }

    @Test
    void a_leg_of_hogget_gives_three_topside_steaks() {
        ExpectedYields yields =
                Yields.of(Marram.tree("hogget.cuts")).forTypicalCarcass().orElseThrow();
        PortionYield steaks = PortionYield.of(yields).stream()
                .filter(portion -> portion.from().cut().equals(path("leg", "topside")))
                .findFirst()
                .orElseThrow();
        // 22 kg × 33 % × 20.5 % × 88.5 % / 2 = 658.6 g a topside: three of 180 g with certainty near 1, a fourth
        // rarely.
        assertEquals(2, steaks.from().pieces());
        assertEquals(3, steaks.counted().orElseThrow().promised(0.95).orElseThrow());
        assertTrue(steaks.counted().orElseThrow().chanceOfAtLeast(4).orElseThrow() < 0.1);
    }

    @Test
    void a_fallow_haunch_weighs_what_the_house_sheet_says() {
        ExpectedYields yields = Yields.of(Marram.tree("fallow.cuts"))
                .forCarcass(new CarcassWeight(Quantity.of("28.40", Unit.KILOGRAM), Basis.COLD))
                .orElseThrow();
        // Multiplied by hand: 28.40 × 39.5 % = 11.2180; × 20 % = 2.24360; × 5 % = 0.56090.
        assertEquals(11.2180, mean(yields, "haunch"), 1e-9);
        assertEquals(2.24360, mean(yields, "haunch", "topside"), 1e-9);
        assertEquals(1.23398, mean(yields, "haunch", "shank"), 1e-9);
        assertEquals(0.56090, mean(yields, "haunch", "rest"), 1e-9);
    }

    @Test
    void a_fallow_topside_is_steaks_unless_a_roast_is_asked_for() {
        CutTree fallow = Marram.tree("fallow.cuts");
        CarcassWeight weight = new CarcassWeight(Quantity.of("28.40", Unit.KILOGRAM), Basis.COLD);
        ExpectedYields steaks = Yields.of(fallow).forCarcass(weight).orElseThrow();
        // 28.40 × 39.5 % × 20 % = 2.24360: 7 % of it is squared off for steaks, and all of it is roast.
        assertEquals(0.07 * 2.24360, mean(steaks, "haunch", "topside", "steaks", "square off"), 1e-9);
        Working roast = Working.AS_WRITTEN.ordering(Order.all(path("topside"), TradeName.of("roast")));
        ExpectedYields roasts = Yields.of(fallow, roast).forCarcass(weight).orElseThrow();
        assertEquals(2.24360, mean(roasts, "haunch", "topside", "roast"), 1e-9);
        assertTrue(roasts.row(path("haunch", "topside", "steaks")).isEmpty());
    }

    @Test
    void a_fallow_deer_may_be_weighed_in_skin() {
        ExpectedYields yields = Yields.of(Marram.tree("fallow.cuts"))
                .forCarcass(new CarcassWeight(Quantity.of("32.0", Unit.KILOGRAM), Basis.IN_SKIN))
                .orElseThrow();
        // 32.0 × 91.5 % × 98.3 %
        assertEquals(28.78224, yields.carcass().allPieces().orElseThrow().mean(), 1e-9);
    }

    @Test
    void what_harbour_table_asked_for_changes_three_cuts_of_the_leg_and_its_rest() {
        ExpectedYields before =
                Yields.of(Marram.tree("hogget.cuts")).forTypicalCarcass().orElseThrow();
        ExpectedYields after = Yields.of(Marram.tree("hogget-harbour-table.cuts"))
                .forTypicalCarcass()
                .orElseThrow();
        List<String> changed = before.rows().stream()
                .filter(row -> Math.abs(mean(row) - mean(after.row(row.path()).orElseThrow())) > 1e-12)
                .filter(row -> row.kind() != Kind.TRIMMED)
                .map(row -> row.path().toString())
                .toList();
        assertEquals(List.of("leg / topside / fat", "leg / heel", "leg / flat", "leg / flat / fat"), changed);
    }

    private static double mean(YieldRow row) {
        return row.allPieces().orElseThrow().mean();
    }

    private static double mean(ExpectedYields yields, String... names) {
        return yields.row(path(names)).orElseThrow().allPieces().orElseThrow().mean();
    }

    private static TreePath path(String... names) {
        return new TreePath(Stream.of(names).map(TradeName::of).toList());
    }
}
