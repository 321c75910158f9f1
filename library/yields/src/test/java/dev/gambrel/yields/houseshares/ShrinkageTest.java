package dev.gambrel.yields.houseshares;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Spread;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShrinkageTest {
    private static final double[] MEANS = {0.33, 0.27, 0.22, 0.18};
    private static final double[] DEVIATIONS = {0.012, 0.010, 0.009, 0.008};
    private static final PublishedShares TABLE = Legs.published(MEANS, DEVIATIONS);

    private static Shrinkage worth(double tests) {
        return new Shrinkage(new TableWorth(tests), TABLE);
    }

    private static LogRatioModel model(CutTests tests, Shrinkage table) {
        return assertInstanceOf(LogRatioModel.class, LogRatioShares.of(tests, table));
    }

    /** Weights Z = 3 / 7; computed independently after H. Bühlmann, 1967 (from memory). */
    @Test
    void three_tests_beside_a_table_worth_four_count_three_sevenths() {
        ExpectedShares drawn = worth(4).of(HouseShares.of(Legs.three()), Averaging.MEAN_OF_SHARES);
        assertArrayEquals(new double[] {0.33628571, 0.26728571, 0.21800000, 0.17842857}, Legs.shares(drawn), 1e-8);
    }

    /**
     * B. Efron and C. Morris, "Stein's paradox in statistics", Scientific American 236, 1977: averages of .400 and .156 of 45 times at bat,
     * drawn towards the mean of .265 by c = 0.212, are printed as .294 and .242. Hits and misses are two parts of a whole.
     */
    @Test
    void baseball_averages_are_drawn_as_printed() {
        double[][] averages = {{0.400, 0.294}, {0.156, 0.242}};
        PublishedShares all = Legs.published(new double[] {0.265, 0.735});
        TableWorth worth = new TableWorth(1 / 0.212 - 1);
        assertEquals(0.212, worth.ownWeight(1), 1e-12);
        for (double[] average : averages) {
            HouseShares one = HouseShares.of(Legs.tests(new double[] {average[0], 1 - average[0]}));
            assertEquals(
                    average[1], Legs.shares(new Shrinkage(worth, all).of(one, Averaging.MEAN_OF_SHARES))[0], 0.0005);
        }
    }

    /** By hand: n = 1, κ = 3, s 0.012: the mean is s / √4 off, and carcasses stray as the table says. */
    @Test
    void with_one_test_the_table_tells_the_spread() {
        HouseShares one = HouseShares.of(Legs.tests(new double[] {0.345, 0.262, 0.215, 0.178}));
        ExpectedShares drawn = worth(3).of(one, Averaging.MEAN_OF_SHARES);
        assertArrayEquals(DEVIATIONS, Legs.spreads(drawn), 1e-12);
        assertArrayEquals(Legs.times(0.5, DEVIATIONS), Legs.doubts(drawn), 1e-12);
    }

    @Test
    void what_neither_tells_is_not_stated() {
        HouseShares one = HouseShares.of(Legs.tests(new double[] {0.345, 0.262, 0.215, 0.178}));
        Shrinkage silent = new Shrinkage(new TableWorth(3), Legs.published(MEANS));
        assertEquals(
                Spread.NOT_STATED,
                silent.of(one, Averaging.MEAN_OF_SHARES).parts().get(0).betweenCarcasses());
        assertInstanceOf(LogRatioCentre.class, LogRatioShares.of(one.tests(), silent));
        assertInstanceOf(LogRatioCentre.class, LogRatioShares.of(one.tests()));
        assertEquals(
                Spread.NOT_STATED,
                LogRatioShares.of(one.tests()).expected().parts().get(0).ofMean());
    }

    /**
     * Three tests of four parts, so that their own covariance is singular. Computed independently, by dense matrices in log-ratios by other
     * axes.
     */
    @Test
    void log_ratios_of_fewer_tests_than_parts_are_carried_by_the_table() {
        LogRatioModel model = model(Legs.three(), worth(4));
        ExpectedShares expected = model.expected();
        assertArrayEquals(new double[] {0.33624585, 0.26728703, 0.21802202, 0.17844510}, Legs.shares(expected), 1e-8);
        assertArrayEquals(new double[] {0.01314716, 0.00960864, 0.00777230, 0.00688446}, Legs.spreads(expected), 1e-8);
        assertArrayEquals(new double[] {0.00496916, 0.00363172, 0.00293765, 0.00260208}, Legs.doubts(expected), 1e-8);
        double[] low = {0.30276577, 0.24291358, 0.19837474, 0.16114158};
        double[] high = {0.37145578, 0.29315908, 0.23903495, 0.19716996};
        for (int i = 0; i < 4; i++) {
            assertEquals(low[i], model.next95(i).low(), 1e-7);
            assertEquals(high[i], model.next95(i).high(), 1e-7);
        }
    }

    @Test
    void a_table_that_counts_nothing_leaves_the_tests_alone() {
        LogRatioModel own = assertInstanceOf(LogRatioModel.class, LogRatioShares.of(Legs.three()));
        assertArrayEquals(
                Legs.shares(own.expected()),
                Legs.shares(model(Legs.three(), worth(0)).expected()),
                1e-15);
        assertArrayEquals(
                Legs.spreads(own.expected()),
                Legs.spreads(model(Legs.three(), worth(0)).expected()),
                1e-15);
        ExpectedShares arithmetic = HouseShares.of(Legs.three()).expected();
        ExpectedShares drawn = worth(0).of(HouseShares.of(Legs.three()), Averaging.RATIO_OF_SUMS);
        assertArrayEquals(Legs.shares(arithmetic), Legs.shares(drawn), 1e-15);
        assertArrayEquals(Legs.spreads(arithmetic), Legs.spreads(drawn), 1e-15);
        assertArrayEquals(Legs.doubts(arithmetic), Legs.doubts(drawn), 1e-15);
    }

    @Test
    void against_a_table_that_counts_for_all_tests_count_nothing() {
        double all = Double.POSITIVE_INFINITY;
        ExpectedShares arithmetic = worth(all).of(HouseShares.of(Legs.three()), Averaging.RATIO_OF_SUMS);
        assertArrayEquals(MEANS, Legs.shares(arithmetic), 1e-15);
        assertArrayEquals(DEVIATIONS, Legs.spreads(arithmetic), 1e-15);
        assertArrayEquals(new double[4], Legs.doubts(arithmetic), 0);
        ExpectedShares logRatios = model(Legs.three(), worth(all)).expected();
        assertArrayEquals(MEANS, Legs.shares(logRatios), 1e-12);
        assertArrayEquals(DEVIATIONS, Legs.spreads(logRatios), 1e-12);
        assertArrayEquals(new double[4], Legs.doubts(logRatios), 0);
    }

    /** z(0.975) = 1.959964; the ends are those of the logarithm of 0.33 / 0.67. */
    @Test
    void a_table_that_counts_for_all_gives_the_range_of_a_normal_figure() {
        Interval next = model(Legs.three(), worth(Double.POSITIVE_INFINITY)).next95(0);
        double half = 1.959964 * 0.012 / (0.33 * 0.67);
        assertEquals(1 / (1 + 0.67 / 0.33 * Math.exp(half)), next.low(), 1e-8);
        assertEquals(1 / (1 + 0.67 / 0.33 * Math.exp(-half)), next.high(), 1e-8);
    }

    @Test
    void a_part_that_strays_wildly_still_stays_inside_the_whole() {
        LogRatioModel wild = assertInstanceOf(
                LogRatioModel.class, LogRatioShares.of(Legs.tests(new double[] {0.001, 9}, new double[] {3, 2})));
        assertTrue(wild.next95(0).low() >= 0 && wild.next95(0).high() <= 1);
        assertTrue(wild.mean95(0).low() > wild.next95(0).low());
    }

    /** Two houses of two tests, by hand: each test is 0.01 off in both parts, each house 0.05 off. */
    @Test
    void what_a_table_is_worth_follows_from_how_houses_differ() {
        CutTests one = Legs.tests(new double[] {0.31, 0.69}, new double[] {0.29, 0.71});
        CutTests other = Legs.tests(new double[] {0.41, 0.59}, new double[] {0.39, 0.61});
        double within = 8 * 0.0001 / 2;
        double between = (8 * 0.0025 - within) / (4 - 8.0 / 4);
        assertEquals(
                within / between, TableWorth.fromHouses(List.of(one, other)).tests(), 1e-12);
        assertEquals(
                Double.POSITIVE_INFINITY,
                TableWorth.fromHouses(List.of(one, one)).tests());
        assertThrows(IllegalArgumentException.class, () -> TableWorth.fromHouses(List.of(one)));
        CutTests single = Legs.tests(new double[] {0.31, 0.69});
        assertThrows(IllegalArgumentException.class, () -> TableWorth.fromHouses(List.of(single, single)));
        assertThrows(IllegalArgumentException.class, () -> TableWorth.fromHouses(List.of(one, Legs.three())));
    }

    @Test
    void tables_that_do_not_close_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> Legs.published(new double[] {0.5, 0.49}));
        assertThrows(IllegalArgumentException.class, () -> Legs.published(new double[] {1, 0}));
        assertThrows(
                IllegalArgumentException.class, () -> Legs.published(new double[] {0.5, 0.3, 0.2}, 0.03, 0.01, 0.01));
        assertEquals(
                0.5 / 0.9996, Legs.published(new double[] {0.5, 0.4996}).means().share(0), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new TableWorth(-1));
        assertThrows(IllegalArgumentException.class, () -> new TableWorth(Double.NaN));
        HouseShares two = HouseShares.of(Legs.tests(new double[] {1, 1}, new double[] {1, 2}));
        assertThrows(IllegalArgumentException.class, () -> worth(1).of(two, Averaging.RATIO_OF_SUMS));
        assertThrows(IllegalArgumentException.class, () -> LogRatioShares.of(two.tests(), worth(1)));
    }
}
