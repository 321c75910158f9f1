package dev.gambrel.yields.houseshares;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.Doubt;
import dev.gambrel.yields.composition.Ducklings;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Spread;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HouseSharesTest {
    /** Legs of 20, 22 and 30 kg: shares of 34.5 %, 32 % and 34 %. */
    private static final CutTests LEGS =
            Legs.tests(new double[] {6.9, 13.1}, new double[] {7.04, 14.96}, new double[] {10.2, 19.8});

    private static final PartShare TOPSIDE = HouseShares.of(LEGS).parts().get(0);

    private static Straying.Known known(PartShare part) {
        return assertInstanceOf(Straying.Known.class, part.straying());
    }

    /** Computed by the definitions. */
    @Test
    void the_mean_of_shares_counts_carcasses_and_the_ratio_of_sums_counts_kilograms() {
        assertEquals(0.335, TOPSIDE.share(Averaging.MEAN_OF_SHARES), 1e-12);
        assertEquals(24.14 / 72, TOPSIDE.share(Averaging.RATIO_OF_SUMS), 1e-12);
        assertEquals(0.01322876, known(TOPSIDE).spread().observed(), 1e-8);
        assertEquals(0.01322876 / Math.sqrt(3), known(TOPSIDE).errorOfMean(), 1e-8);
        assertEquals(24.14 / 72, HouseShares.of(LEGS).expected().parts().get(0).share(), 1e-12);
    }

    /** √(3 / 2 · Σ (y − Rx)²) / Σx, computed independently; W. G. Cochran, Sampling Techniques, 1977, chapter 6 (from memory). */
    @Test
    void the_ratio_of_sums_has_a_standard_error_of_its_own() {
        assertEquals(0.0070310317, known(TOPSIDE).errorOfRatio(), 1e-10);
    }

    /** t(0.975; 2) = 4.303 in any table of Student's t. */
    @Test
    void few_tests_give_wide_ranges() {
        Interval mean = TOPSIDE.mean95(Averaging.MEAN_OF_SHARES).orElseThrow();
        double half = 4.302653 * 0.01322876 / Math.sqrt(3);
        assertEquals(0.335 - half, mean.low(), 1e-7);
        assertEquals(0.335 + half, mean.high(), 1e-7);
        Interval next = TOPSIDE.next95(Averaging.MEAN_OF_SHARES).orElseThrow();
        assertEquals(0.335 - 2 * half, next.low(), 1e-7);
        assertEquals(0.335 + 2 * half, next.high(), 1e-7);
    }

    @Test
    void no_range_leaves_the_whole() {
        PartShare rare = HouseShares.of(Legs.tests(
                        new double[] {0.1, 9.9}, new double[] {1.5, 8.5}, new double[] {0.4, 9.6}, new double[] {
                            0.2, 9.8
                        }))
                .parts()
                .get(0);
        assertEquals(0, rare.next95(Averaging.MEAN_OF_SHARES).orElseThrow().low());
        assertTrue(rare.next95(Averaging.MEAN_OF_SHARES).orElseThrow().high() < 1);
    }

    @Test
    void one_test_tells_a_share_and_no_spread() {
        HouseShares one = HouseShares.of(Legs.tests(new double[] {6.9, 13.1}));
        PartShare topside = one.parts().get(0);
        assertEquals(0.345, topside.share(Averaging.RATIO_OF_SUMS), 1e-12);
        assertInstanceOf(Straying.OneTest.class, topside.straying());
        assertEquals(Optional.empty(), topside.mean95(Averaging.RATIO_OF_SUMS));
        assertEquals(Optional.empty(), topside.next95(Averaging.MEAN_OF_SHARES));
        assertEquals(Spread.NOT_STATED, one.expected().parts().get(0).betweenCarcasses());
        assertEquals(new Doubt.OfParts(Map.of()), one.expected().doubt(TreePath.ROOT));
        assertInstanceOf(
                ProposedShare.NotKnown.class,
                one.expected().proposal(1).lines().get(0).spread());
    }

    /** The doubt goes to the yields of many carcasses in points of a per cent. */
    @Test
    void the_doubt_of_a_mean_is_kept_apart_from_the_spread_between_carcasses() {
        ExpectedShares expected = HouseShares.of(LEGS).expected(Averaging.MEAN_OF_SHARES);
        TreePath leg = TreePath.ROOT.then(TradeName.of("leg"));
        Doubt.OfParts doubt = expected.doubt(leg);
        assertEquals(1.322876 / Math.sqrt(3), doubt.points().get(leg.then(TradeName.of("part a"))), 1e-6);
        assertEquals(0.01322876, Legs.spreads(expected)[0], 1e-8);
        assertEquals(2, doubt.points().size());
    }

    @Test
    void tests_that_all_give_the_same_leave_no_range() {
        CuttingTest one = CuttingTest.of("a", 1, 3);
        PartShare topside = HouseShares.of(new CutTests(Legs.parts(2), List.of(one, one.counting(0.001))))
                .parts()
                .get(0);
        assertEquals(
                new Interval(0.25, 0.25),
                topside.next95(Averaging.MEAN_OF_SHARES).orElseThrow());
    }

    /** Three tests that count 1, ½ and ½ say as much as 2² / 1.5 tests. */
    @Test
    void an_old_test_counts_less() {
        CutTests aged = new CutTests(
                LEGS.parts(),
                List.of(
                        LEGS.tests().get(0),
                        LEGS.tests().get(1).counting(0.5),
                        LEGS.tests().get(2).counting(0.5)));
        assertEquals(4 / 1.5, aged.effectiveNumber(), 1e-12);
        PartShare topside = HouseShares.of(aged).parts().get(0);
        assertEquals((0.345 + 0.16 + 0.17) / 2, topside.share(Averaging.MEAN_OF_SHARES), 1e-12);
        assertEquals((6.9 + 3.52 + 5.1) / 46, topside.share(Averaging.RATIO_OF_SUMS), 1e-12);
        double variance = (0.0075 * 0.0075 + 0.5 * 0.0175 * 0.0175 + 0.5 * 0.0025 * 0.0025) / (2 - 1.5 / 2);
        assertEquals(Math.sqrt(variance), known(topside).spread().observed(), 1e-12);
        assertEquals(Math.sqrt(variance / (4 / 1.5)), known(topside).errorOfMean(), 1e-12);
    }

    /** By hand: of 10 kg in two halves, each ± 0.1 kg, a share is off by √(0.05² + 0.05²) / 10. */
    @Test
    void the_error_of_the_scales_is_taken_off_what_is_seen() {
        CutTests tests = new CutTests(
                Legs.parts(2), List.of(halves("one", 5.2, 4.8), halves("two", 5.0, 5.0), halves("three", 4.8, 5.2)));
        ShareSpread spread = known(HouseShares.of(tests).parts().get(0)).spread();
        assertEquals(0.02, spread.observed(), 1e-12);
        double weighing = Math.sqrt(
                (0.052 * 0.052 + 0.048 * 0.048 + 0.05 * 0.05 + 0.05 * 0.05 + 0.048 * 0.048 + 0.052 * 0.052) / 3 / 100);
        assertEquals(weighing, ((Spread.Stated) spread.weighing()).standardDeviation(), 1e-12);
        assertEquals(Math.sqrt(0.0004 - weighing * weighing), spread.betweenCarcasses(), 1e-12);
        assertFalse(spread.isDrownedByWeighing());
    }

    private static CuttingTest halves(String name, double one, double other) {
        return CuttingTest.weighed(
                name, List.of(new Estimate(one, new Spread.Stated(0.1)), new Estimate(other, new Spread.Stated(0.1))));
    }

    @Test
    void where_the_scales_explain_all_that_is_said_and_nothing_is_below_0() {
        CutTests tests = new CutTests(Legs.parts(2), List.of(halves("one", 5.001, 4.999), halves("two", 5.0, 5.0)));
        ShareSpread spread = known(HouseShares.of(tests).parts().get(0)).spread();
        assertTrue(spread.isDrownedByWeighing());
        assertEquals(0, spread.betweenCarcasses());
    }

    @Test
    void an_error_of_weighing_that_nobody_stated_stays_in_the_spread() {
        ShareSpread spread = known(TOPSIDE).spread();
        assertEquals(Spread.NOT_STATED, spread.weighing());
        assertEquals(spread.observed(), spread.betweenCarcasses());
        assertFalse(spread.isDrownedByWeighing());
    }

    /** Computed independently; data of J. E. Mosimann, 1962. */
    @Test
    void three_parts_ask_for_three_dirichlet_distributions() {
        double[][] rows = Ducklings.shares().toArray(double[][]::new);
        double[] concentrations = {41.087814, 36.731419, 60.476016};
        List<PartShare> parts = HouseShares.of(Legs.tests(rows)).parts();
        for (int i = 0; i < 3; i++) {
            double m = parts.get(i).meanOfShares();
            double sd = known(parts.get(i)).spread().observed();
            assertEquals(concentrations[i], m * (1 - m) / (sd * sd) - 1, 1e-5);
        }
    }

    @Test
    void weights_that_are_none_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> CuttingTest.of("a", 1));
        assertThrows(IllegalArgumentException.class, () -> CuttingTest.of("a", 1, -1));
        assertThrows(IllegalArgumentException.class, () -> CuttingTest.of("a", 1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> CuttingTest.of("a", 0, 0));
        assertThrows(IllegalArgumentException.class, () -> CuttingTest.of("a", 1, Double.POSITIVE_INFINITY));
        assertThrows(
                IllegalArgumentException.class, () -> CuttingTest.of("a", 1, 1).counting(0));
        assertThrows(IllegalArgumentException.class, () -> new CutTests(Legs.parts(2), List.of()));
        assertThrows(
                IllegalArgumentException.class, () -> new CutTests(Legs.parts(3), List.of(CuttingTest.of("a", 1, 1))));
        assertThrows(IllegalArgumentException.class, () -> Legs.tests(new double[] {1, 0}));
        CuttingTest one = CuttingTest.of("a", 1, 1);
        assertThrows(
                IllegalArgumentException.class, () -> new CutTests(Legs.parts(2), List.of(one, one.counting(0.000_9))));
        assertThrows(IllegalArgumentException.class, () -> TestsClosed.of(Legs.parts(3), List.of(one)));
    }

    @Test
    void averages_say_what_they_count() {
        assertArrayEquals(
                new String[] {"ratio of sums: every kilogram counts once", "mean of shares: every carcass counts once"},
                new String[] {Averaging.RATIO_OF_SUMS.words(), Averaging.MEAN_OF_SHARES.words()});
    }
}
