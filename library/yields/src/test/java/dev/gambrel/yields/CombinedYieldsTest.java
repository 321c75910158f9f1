package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.kilograms;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.row;
import static dev.gambrel.yields.Sheet.sd;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.figure.CombinedEstimate;
import dev.gambrel.yields.figure.CombinedFigures;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CombinedYieldsTest {
    private static final CutTree LEG = hogget(
            cut("leg", "33 ± 0.9", cut("topside", "20 ± 1"), rest("mince")), cut("loin", "20 ± 0.5"), rest("mince"));

    private static CombinedYields of(CarcassLot carcasses, Doubt doubt) {
        return Yields.of(LEG).forCarcasses(carcasses, doubt).orElseThrow();
    }

    private static CarcassLot alike(int number) {
        return CarcassLot.alike(number, kilograms("20", Basis.COLD));
    }

    private static CombinedEstimate weight(CombinedYields yields, String line) {
        return yields.allPieces(row(yields.ofOne(), line)).orElseThrow();
    }

    private static double sdOf(Spread spread) {
        return ((Spread.Stated) spread).standardDeviation();
    }

    /** By hand: 0.9 points of 20 kg are 0.18 kg a carcass; 100 of them 1.8 kg; the mean of 36 tests is known to 0.03 kg. */
    @Test
    void what_carcasses_differ_by_averages_out_and_what_is_not_known_of_the_mean_does_not() {
        CombinedEstimate leg = weight(of(alike(100), Doubt.fromTests(36)), "leg");
        assertEquals(660, leg.mean(), 1e-9);
        assertEquals(1.8, sdOf(leg.between()), 1e-9);
        assertEquals(3.0, sdOf(leg.doubt()), 1e-9);
        assertEquals(Math.sqrt(1.8 * 1.8 + 3.0 * 3.0), sd(leg.whole()), 1e-9);
        assertEquals(1.8, sd(leg.betweenAlone()), 1e-9);
    }

    /**
     * By hand for topsides of two carcasses of 1 kg with doubts of half the spread each: V_D = m²d² + n²c² + c²d² with m, n the
     * means, c and d the standard errors.
     */
    @Test
    void what_is_a_product_of_shares_strays_by_both_kinds_at_both_levels() {
        double leg = 0.009 * 0.009;
        double topside = 0.01 * 0.01;
        double doubt = product(leg / 4, topside / 4);
        double both = product(1.25 * leg, 1.25 * topside);
        CombinedEstimate found =
                weight(of(CarcassLot.alike(2, kilograms("1", Basis.COLD)), Doubt.fromTests(4)), "topside");
        assertEquals(2 * 0.33 * 0.20, found.mean(), 1e-12);
        assertEquals(2 * (both - doubt), found.between().variance(), 1e-15);
        assertEquals(4 * doubt, found.doubt().variance(), 1e-15);
    }

    private static double product(double ofLeg, double ofTopside) {
        return 0.33 * 0.33 * ofTopside + 0.2 * 0.2 * ofLeg + ofLeg * ofTopside;
    }

    @Test
    void one_carcass_of_means_known_exactly_is_one_carcass() {
        ExpectedYields one = yields(LEG, "20");
        CombinedYields all = of(alike(1), Doubt.NONE);
        for (int i = 0; i < one.rows().size(); i++) {
            Estimate alone = one.rows().get(i).allPieces().orElseThrow();
            Estimate whole =
                    all.allPieces(all.ofOne().rows().get(i)).orElseThrow().whole();
            assertEquals(alone.mean(), whole.mean(), 1e-12);
            assertEquals(sd(alone), sd(whole), 1e-12);
        }
        assertEquals(
                sd(one.total(Outcome.SALEABLE)), sd(all.total(Outcome.SALEABLE).whole()), 1e-12);
        assertEquals(sd(one.products()), sd(all.products().whole()), 1e-12);
        assertEquals(
                sd(one.streams().get(1).weight()),
                sd(all.streams().get(1).weight().whole()),
                1e-12);
    }

    @Test
    void all_that_was_weighed_is_certain_whatever_is_not_said() {
        CombinedYields all = of(alike(40), Doubt.NOT_SAID);
        CombinedEstimate whole = all.figure(line -> line.isEnd() ? 1 : 0);
        assertEquals(800, whole.mean(), 800e-12);
        assertEquals(Spread.NONE, whole.between());
        assertEquals(Spread.NONE, whole.doubt());
    }

    @Test
    void a_doubt_that_nobody_spoke_of_is_not_none() {
        CombinedEstimate leg = weight(of(alike(100), Doubt.NOT_SAID), "leg");
        assertEquals(1.8, sdOf(leg.between()), 1e-9);
        assertEquals(Spread.NOT_STATED, leg.doubt());
        assertEquals(Spread.NOT_STATED, leg.whole().spread());
        assertEquals(Spread.NONE, weight(of(alike(100), Doubt.NONE), "leg").doubt());
    }

    /** By hand: the sum of the squares of 18, 20 and 25 kg is 1349. */
    @Test
    void heavy_carcasses_count_for_more() {
        List<CarcassWeight> weights =
                List.of(kilograms("18", Basis.COLD), kilograms("20", Basis.COLD), kilograms("25", Basis.COLD));
        CombinedEstimate leg = weight(of(CarcassLot.weighed(weights), Doubt.NONE), "leg");
        assertEquals(63 * 0.33, leg.mean(), 1e-12);
        assertEquals(0.009 * Math.sqrt(1349), sdOf(leg.between()), 1e-12);
    }

    /** The saleable weight of one carcass of 22 kg ± 1.5 kg is the exact product: Goodman (1960). */
    @Test
    void carcasses_that_are_not_weighed_yet_stray_by_their_weight_too() {
        Expected each = new Expected.PlusMinus(Quantity.of("22", Unit.KILOGRAM), Quantity.of("1.5", Unit.KILOGRAM));
        CombinedEstimate leg = weight(of(CarcassLot.expected(9, each, Basis.COLD), Doubt.NONE), "leg");
        double ofOne = 22 * 22 * 0.009 * 0.009 + 1.5 * 1.5 * 0.009 * 0.009 + 1.5 * 1.5 * 0.33 * 0.33;
        assertEquals(3 * Math.sqrt(ofOne), sdOf(leg.between()), 1e-12);
        CombinedYields all = of(CarcassLot.expected(9, each, Basis.COLD), Doubt.NONE);
        assertEquals(4.5, sd(all.lot().kilograms()), 1e-12);
    }

    @Test
    void a_weight_that_is_expected_without_a_spread_leaves_all_spreads_open_but_that_of_nothing() {
        Expected each = new Expected.Mean(Quantity.of("22", Unit.KILOGRAM));
        CombinedYields all = of(CarcassLot.expected(9, each, Basis.COLD), Doubt.NONE);
        assertEquals(Spread.NOT_STATED, weight(all, "leg").between());
        assertEquals(Spread.NONE, all.total(Outcome.WASTE).between());
    }

    @Test
    void doubt_may_be_said_of_each_part() {
        TreePath leg = TreePath.ROOT.then(Sheet.name("leg"));
        TreePath loin = TreePath.ROOT.then(Sheet.name("loin"));
        CombinedYields all = of(alike(100), new Doubt.OfParts(Map.of(leg, 0.1, loin, 0.2)));
        assertEquals(2, sdOf(weight(all, "leg").doubt()), 1e-9);
        assertEquals(4, sdOf(weight(all, "loin").doubt()), 1e-9);
        assertEquals(Spread.NOT_STATED, weight(all, "topside").doubt());
        CombinedFigures both = all.figures(List.of(
                line -> line.name().equals("leg") ? 1 : 0,
                line -> line.level() == 1 && line.name().equals("rest") ? 1 : 0));
        assertEquals(-4, both.doubt().covariance(0, 1).orElseThrow(), 1e-9);
        assertEquals(Math.sqrt(20), sdOf(both.figure(1).doubt()), 1e-9);
    }

    @Test
    void figures_vary_together_in_both_ways_and_these_add_up() {
        CombinedFigures both = of(alike(100), Doubt.fromTests(36))
                .figures(List.of(
                        line -> line.name().equals("leg") ? 1 : 0,
                        line -> line.level() == 1 && line.name().equals("rest") ? 1 : 0));
        assertEquals(-1.8 * 1.8, both.between().covariance(0, 1).orElseThrow(), 1e-9);
        assertEquals(-3.0 * 3.0, both.doubt().covariance(0, 1).orElseThrow(), 1e-9);
        assertEquals(-1.8 * 1.8 - 9, both.whole().covariance(0, 1).orElseThrow(), 1e-9);
    }

    @Test
    void carcasses_outside_the_band_are_told_of() {
        List<CarcassWeight> weights = List.of(kilograms("18", Basis.COLD), kilograms("22", Basis.COLD));
        var found = Yields.of(LEG).forCarcasses(CarcassLot.weighed(weights), Doubt.NONE);
        assertEquals(
                List.of(YieldCode.OUTSIDE_BAND),
                found.diagnostics().stream().map(d -> d.code()).toList());
        assertTrue(found.value().isPresent());
    }

    @Test
    void no_carcasses_or_carcasses_on_two_bases_are_refused() {
        CarcassWeight cold = kilograms("20", Basis.COLD);
        assertThrows(IllegalArgumentException.class, () -> CarcassLot.alike(0, cold));
        assertThrows(IllegalArgumentException.class, () -> CarcassLot.weighed(List.of()));
        assertThrows(
                IllegalArgumentException.class, () -> CarcassLot.weighed(List.of(cold, kilograms("20", Basis.WARM))));
        assertThrows(IllegalArgumentException.class, () -> Doubt.fromTests(0));
        assertThrows(IllegalArgumentException.class, () -> new Doubt.OfParts(Map.of(TreePath.ROOT, -0.1)));
    }
}
