package dev.gambrel.yields.houseshares;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.composition.Composition;
import dev.gambrel.yields.figure.Interval;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler.NormalizedGaussian;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** Ranges that are said to hold in 95 of 100 cases do, whatever the number of tests: held against draws. */
class CoverageTest {
    private static final int DRAWS = 20_000;

    /** Four standard deviations of a share of 0.95 among so many draws. */
    private static final double TOLERANCE = 4 * Math.sqrt(0.95 * 0.05 / DRAWS);

    private final NormalizedGaussian normal =
            NormalizedGaussian.of(RandomSource.XO_RO_SHI_RO_128_PP.create(20_260_302L));

    private double[] drawn(double whole) {
        double topside = 0.33 + 0.012 * normal.sample();
        return new double[] {topside * whole, (1 - topside) * whole};
    }

    private void assertCovers(int tests, Averaging by, boolean next, double tolerance) {
        int held = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double[][] weights = new double[tests][];
            for (int t = 0; t < tests; t++) {
                weights[t] = drawn(by == Averaging.MEAN_OF_SHARES ? 20 : 20 + normal.sample());
            }
            PartShare topside = HouseShares.of(Legs.tests(weights)).parts().get(0);
            Interval range = (next ? topside.next95(by) : topside.mean95(by)).orElseThrow();
            held += holds(range, next ? drawn(1)[0] : 0.33) ? 1 : 0;
        }
        assertEquals(0.95, (double) held / DRAWS, tolerance, tests + " tests, " + by + (next ? ", next" : ", mean"));
    }

    private static boolean holds(Interval range, double share) {
        return range.low() <= share && share <= range.high();
    }

    @Test
    void the_mean_lies_in_its_range_as_often_as_said() {
        for (int tests : new int[] {2, 3, 5, 12}) {
            assertCovers(tests, Averaging.MEAN_OF_SHARES, false, TOLERANCE);
        }
    }

    @Test
    void the_next_carcass_lies_in_its_range_as_often_as_said() {
        for (int tests : new int[] {2, 3, 5, 12}) {
            assertCovers(tests, Averaging.MEAN_OF_SHARES, true, TOLERANCE);
        }
    }

    /** Its standard error is good to the first order only. */
    @Test
    void the_ratio_of_sums_lies_in_its_range_about_as_often_as_said() {
        for (int tests : new int[] {3, 5, 12}) {
            assertCovers(tests, Averaging.RATIO_OF_SUMS, false, 0.01);
            assertCovers(tests, Averaging.RATIO_OF_SUMS, true, 0.01);
        }
    }

    /** Log-ratios of three parts drawn as normal; the range of a share is good to the first order of its spread. */
    @Test
    void the_next_carcass_lies_in_the_range_of_its_log_ratios_about_as_often_as_said() {
        for (int tests : new int[] {2, 4, 10}) {
            int[] held = new int[3];
            for (int draw = 0; draw < DRAWS; draw++) {
                double[][] weights = new double[tests][];
                for (int t = 0; t < tests; t++) {
                    weights[t] = shares(logNormal());
                }
                LogRatioModel model = (LogRatioModel) LogRatioShares.of(Legs.tests(weights));
                Composition next = logNormal();
                for (int i = 0; i < 3; i++) {
                    held[i] += holds(model.next95(i), next.share(i)) ? 1 : 0;
                }
            }
            for (int i = 0; i < 3; i++) {
                assertEquals(0.95, (double) held[i] / DRAWS, 0.01, tests + " tests, part " + i);
            }
        }
    }

    private Composition logNormal() {
        return Composition.ofIlr(0.3 + 0.1 * normal.sample(), -0.4 + 0.08 * normal.sample());
    }

    private static double[] shares(Composition composition) {
        return new double[] {composition.share(0), composition.share(1), composition.share(2)};
    }

    /** Houses about a table as far as κ says: the mean drawn to it is nearer the truth than that of the tests. */
    @Test
    void shares_drawn_to_the_table_are_nearer_the_truth_on_average_and_as_near_as_they_say() {
        double between = 0.012 / Math.sqrt(4);
        PublishedShares table = Legs.published(new double[] {0.33, 0.67}, 0.012, 0.012);
        Shrinkage four = new Shrinkage(new TableWorth(4), table);
        double own = 0;
        double drawn = 0;
        double said = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double truth = 0.33 + between * normal.sample();
            double[][] weights = new double[3][];
            for (int t = 0; t < 3; t++) {
                double topside = truth + 0.012 * normal.sample();
                weights[t] = new double[] {topside, 1 - topside};
            }
            HouseShares house = HouseShares.of(Legs.tests(weights));
            ExpectedShare topside =
                    four.of(house, Averaging.MEAN_OF_SHARES).parts().get(0);
            own += Math.pow(house.parts().get(0).meanOfShares() - truth, 2);
            drawn += Math.pow(topside.share() - truth, 2);
            said += topside.ofMean().variance();
        }
        assertTrue(drawn < 0.6 * own, drawn + " of " + own);
        assertEquals(1, drawn / said, 0.05);
    }
}
