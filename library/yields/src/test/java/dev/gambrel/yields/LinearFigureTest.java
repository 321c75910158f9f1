package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.sd;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.figure.CombinedEstimate;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.figure.Spread;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class LinearFigureTest {
    private static final CutTree SIDES = hogget(
            cut("fore", "40 ± 1.2"),
            cut("middle", "24 ± 1.0"),
            cut("hind", "36 ± 0.9", cut("leg", "74 ± 1.2"), rest("mince")));

    private static final Map<String, Double> SALEABLE = Map.of("fore", 0.78, "middle", 0.81, "leg", 0.85, "rest", 0.80);

    private static Estimate saleable(String kilograms) {
        return yields(SIDES, kilograms).figure(row -> SALEABLE.getOrDefault(row.name(), 0.0));
    }

    /** Computed for Gambrel by two programs and confirmed by 4,000,000 draws. */
    @Test
    void an_uncertain_carcass_makes_an_uncertain_saleable_weight() {
        Estimate carcass = new Estimate(22, new Spread.Stated(1.5));
        Estimate weight = carcass.timesIndependent(saleable("1"));
        assertEquals(17.76984000, weight.mean(), 1e-7);
        assertEquals(1.21164754, sd(weight), 1e-7);
        Expected expected = new Expected.PlusMinus(Quantity.of("22", Unit.KILOGRAM), Quantity.of("1.5", Unit.KILOGRAM));
        CombinedEstimate ofOne = Yields.of(SIDES)
                .forCarcasses(CarcassLot.expected(1, expected, Basis.COLD), Doubt.NONE)
                .orElseThrow()
                .figure(row -> SALEABLE.getOrDefault(row.name(), 0.0));
        assertEquals(17.76984000, ofOne.mean(), 1e-7);
        assertEquals(1.21164754, sd(ofOne.whole()), 1e-7);
    }

    @Test
    void several_figures_have_each_its_own_open_entries() {
        ExpectedYields yields = yields(hogget(cut("leg", "33"), cut("loin", "20 ± 0.5"), rest("mince")), "20");
        JointEstimate figures = yields.figures(List.of(only("leg"), only("loin"), row -> row.isEnd() ? 1 : 0));
        assertEquals(6.6, figures.mean(0), 1e-12);
        assertEquals(Spread.NOT_STATED, figures.figure(0).spread());
        assertEquals(0.1, sd(figures.figure(1)), 1e-12);
        assertEquals(Spread.NONE, figures.figure(2).spread());
        assertEquals(0, figures.covariance(0, 1).orElseThrow());
        assertEquals(Spread.NOT_STATED, figures.combination(1, 1, 0).spread());
    }

    @Test
    void the_weight_of_a_line_is_the_figure_that_counts_it_alone() {
        ExpectedYields yields = yields(SIDES, "22");
        for (YieldRow line : yields.rows()) {
            Estimate alone = yields.figure(row -> row.name().equals(line.name()) ? 1 : 0);
            Estimate weight = line.allPieces().orElseThrow();
            assertEquals(weight.mean(), alone.mean(), 1e-12);
            assertEquals(sd(weight), sd(alone), 1e-12);
        }
    }

    @Test
    void nothing_is_gained_or_lost_between_the_ends() {
        Estimate all = yields(SIDES, "22").figure(row -> row.isEnd() ? 1 : 0);
        assertEquals(22, all.mean(), 22e-12);
        assertEquals(Spread.NONE, all.spread());
    }

    /** By hand: 0.9 points of 20 kg are 0.18 kg, and 0.5 points are 0.10 kg. */
    @Test
    void what_the_leg_gains_the_rest_loses() {
        ExpectedYields yields = yields(hogget(cut("leg", "33 ± 0.9"), cut("loin", "20 ± 0.5"), rest("mince")), "20");
        assertEquals(-0.18 * 0.18, covariance(yields, "leg", "rest"), 1e-15);
        assertEquals(-0.10 * 0.10, covariance(yields, "loin", "rest"), 1e-15);
        assertEquals(0, covariance(yields, "leg", "loin"), 1e-15);
        assertEquals(0.18 * 0.18, covariance(yields, "leg", "leg"), 1e-15);
    }

    /** By hand, L the leg, S the topside's share: Cov[LS, L(1 − S)] = −E[L²] Var[S] + Var[L] E[S] (1 − E[S]). */
    @Test
    void two_parts_of_a_leg_vary_together_as_the_leg_does_and_against_each_other_as_it_is_divided() {
        CutTree tree = hogget(cut("leg", "33 ± 0.9", cut("topside", "40 ± 2"), rest("mince")), cut("fore", "67 ± 0.9"));
        double variance = 0.009 * 0.009;
        double square = 0.33 * 0.33 + variance;
        double byHand = square * -(0.02 * 0.02) + variance * 0.4 * 0.6;
        assertEquals(byHand, covariance(yields(tree, "1"), "topside", "rest"), 1e-15);
    }

    @Test
    void spreads_that_are_not_stated_leave_a_covariance_open() {
        ExpectedYields yields = yields(hogget(cut("leg", "33"), cut("loin", "20 ± 0.5"), rest("mince")), "20");
        assertTrue(yields.covariance(only("leg"), only("rest")).isEmpty());
        assertEquals(0, covariance(yields, "leg", "loin"));
    }

    @Test
    void without_a_rest_two_stated_spreads_of_several_do_not_tell_how_they_vary_together() {
        ExpectedYields yields = yields(
                hogget(cut("leg", "33 ± 0.9"), cut("loin", "20 ± 0.5"), cut("fore", "27"), cut("flank", "20")), "20");
        assertTrue(yields.covariance(only("leg"), only("loin")).isEmpty());
        assertEquals(0.18 * 0.18, covariance(yields, "leg", "leg"), 1e-15);
    }

    private static double covariance(ExpectedYields yields, String one, String other) {
        return yields.covariance(only(one), only(other)).orElseThrow();
    }

    private static ToDoubleFunction<YieldRow> only(String name) {
        return row -> row.name().equals(name) ? 1 : 0;
    }
}
