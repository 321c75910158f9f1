package dev.gambrel.yields.houseshares;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.composition.Composition;
import dev.gambrel.yields.figure.Interval;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class HouseSharesLaws {
    private static final PublishedShares TABLE =
            Legs.published(new double[] {0.4, 0.3, 0.2, 0.1}, 0.02, 0.015, 0.012, 0.01);

    private static List<ExpectedShares> ways(CutTests tests, double worth) {
        HouseShares own = HouseShares.of(tests);
        Shrinkage table = new Shrinkage(new TableWorth(worth), TABLE);
        return List.of(
                own.expected(Averaging.RATIO_OF_SUMS),
                own.expected(Averaging.MEAN_OF_SHARES),
                LogRatioShares.of(tests).expected(),
                table.of(own, Averaging.RATIO_OF_SUMS),
                LogRatioShares.of(tests, table).expected());
    }

    private static void assertSame(List<ExpectedShares> one, List<ExpectedShares> other) {
        for (int i = 0; i < one.size(); i++) {
            assertArrayEquals(Legs.shares(one.get(i)), Legs.shares(other.get(i)), 1e-10);
            assertArrayEquals(Legs.spreads(one.get(i)), Legs.spreads(other.get(i)), 1e-8);
            assertArrayEquals(Legs.doubts(one.get(i)), Legs.doubts(other.get(i)), 1e-8);
        }
    }

    @Property(tries = 300)
    void proposals_add_up_to_exactly_100_and_their_spreads_can_be(
            @ForAll @Size(min = 1, max = 9) List<@Size(4) List<@DoubleRange(min = 0.01, max = 50) Double>> rows,
            @ForAll @DoubleRange(min = 0, max = 20) double worth,
            @ForAll @IntRange(max = 4) int places) {
        for (ExpectedShares expected : ways(Legs.tests(Legs.rows(rows)), worth)) {
            Proposal proposal = expected.proposal(places);
            BigDecimal sum = BigDecimal.ZERO;
            List<BigDecimal> spreads = new ArrayList<>();
            for (ProposedShare line : proposal.lines()) {
                sum = sum.add(line.percent());
                assertEquals(places, line.percent().scale());
                if (line.spread() instanceof ProposedShare.AsFound found) {
                    spreads.add(found.points());
                } else if (line.spread() instanceof ProposedShare.Lessened lessened) {
                    spreads.add(lessened.points());
                }
            }
            assertEquals(0, sum.compareTo(BigDecimal.valueOf(100)));
            BigDecimal all = spreads.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            assertTrue(spreads.stream().allMatch(spread -> spread.compareTo(all.subtract(spread)) <= 0));
        }
    }

    @Property(tries = 200)
    void the_order_of_tests_makes_no_difference(
            @ForAll @Size(min = 2, max = 9) List<@Size(4) List<@DoubleRange(min = 0.1, max = 50) Double>> rows,
            @ForAll long seed) {
        CutTests tests = Legs.tests(Legs.rows(rows));
        List<CuttingTest> shuffled = new ArrayList<>(tests.tests());
        Collections.shuffle(shuffled, new Random(seed));
        assertSame(ways(tests, 3), ways(new CutTests(tests.parts(), shuffled), 3));
    }

    @Property(tries = 200)
    void grams_and_kilograms_give_the_same_shares(
            @ForAll @Size(min = 2, max = 9) List<@Size(4) List<@DoubleRange(min = 0.1, max = 50) Double>> rows,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double factor) {
        double[][] kilograms = Legs.rows(rows);
        double[][] scaled =
                Arrays.stream(kilograms).map(row -> Legs.times(factor, row)).toArray(double[][]::new);
        assertSame(ways(Legs.tests(kilograms), 3), ways(Legs.tests(scaled), 3));
    }

    @Property(tries = 200)
    void what_all_tests_count_makes_no_difference_where_they_count_alike(
            @ForAll @Size(min = 2, max = 9) List<@Size(4) List<@DoubleRange(min = 0.1, max = 50) Double>> rows,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double counts) {
        CutTests tests = Legs.tests(Legs.rows(rows));
        List<CuttingTest> counting =
                tests.tests().stream().map(test -> test.counting(counts)).toList();
        assertSame(ways(tests, 3), ways(new CutTests(tests.parts(), counting), 3));
    }

    /** Twice as many tests as before, of which only half are news: means stay, spreads and doubts shrink. */
    @Property(tries = 200)
    void tests_taken_twice_count_as_twice_as_many(
            @ForAll @Size(min = 2, max = 6) List<@Size(4) List<@DoubleRange(min = 0.1, max = 50) Double>> rows) {
        CutTests once = Legs.tests(Legs.rows(rows));
        List<CuttingTest> tests = new ArrayList<>(once.tests());
        tests.addAll(once.tests());
        CutTests twice = new CutTests(once.parts(), tests);
        assertEquals(2 * once.effectiveNumber(), twice.effectiveNumber(), 1e-12);
        ExpectedShares one = HouseShares.of(once).expected(Averaging.MEAN_OF_SHARES);
        ExpectedShares two = HouseShares.of(twice).expected(Averaging.MEAN_OF_SHARES);
        int n = once.tests().size();
        assertEquals(2 * n, two.tests());
        assertArrayEquals(Legs.shares(one), Legs.shares(two), 1e-12);
        assertArrayEquals(
                Legs.times(Math.sqrt(2 * (n - 1) / (2 * n - 1.0)), Legs.spreads(one)), Legs.spreads(two), 1e-9);
    }

    @Property(tries = 200)
    void the_more_a_table_is_worth_the_nearer_the_shares_come_to_it(
            @ForAll @Size(min = 1, max = 6) List<@Size(4) List<@DoubleRange(min = 0.1, max = 50) Double>> rows,
            @ForAll @DoubleRange(min = 0, max = 50) double worth,
            @ForAll @DoubleRange(min = 0.1, max = 50) double more) {
        CutTests tests = Legs.tests(Legs.rows(rows));
        List<ExpectedShares> less = ways(tests, worth);
        List<ExpectedShares> nearer = ways(tests, worth + more);
        for (int i = 0; i < 4; i++) {
            double gap = Math.abs(Legs.shares(less.get(3))[i] - TABLE.means().share(i));
            assertTrue(Math.abs(Legs.shares(nearer.get(3))[i] - TABLE.means().share(i)) <= gap + 1e-12);
        }
        double distance = centre(tests, worth).distanceTo(TABLE.means());
        assertTrue(centre(tests, worth + more).distanceTo(TABLE.means()) <= distance + 1e-9);
    }

    private static Composition centre(CutTests tests, double worth) {
        return LogRatioShares.of(tests, new Shrinkage(new TableWorth(worth), TABLE))
                .centre();
    }

    @Property(tries = 200)
    void ranges_hold_their_share_and_stay_inside_the_whole(
            @ForAll @Size(min = 2, max = 6) List<@Size(4) List<@DoubleRange(min = 0.01, max = 50) Double>> rows) {
        CutTests tests = Legs.tests(Legs.rows(rows));
        LogRatioModel model = (LogRatioModel) LogRatioShares.of(tests);
        for (int i = 0; i < 4; i++) {
            PartShare part = HouseShares.of(tests).parts().get(i);
            assertHolds(part.mean95(Averaging.RATIO_OF_SUMS).orElseThrow(), part.ratioOfSums());
            assertHolds(part.next95(Averaging.MEAN_OF_SHARES).orElseThrow(), part.meanOfShares());
            assertHolds(model.mean95(i), model.centre().share(i));
            assertHolds(model.next95(i), model.centre().share(i));
        }
    }

    private static void assertHolds(Interval range, double share) {
        assertTrue(0 <= range.low() && range.low() <= share + 1e-12);
        assertTrue(share - 1e-12 <= range.high() && range.high() <= 1);
    }
}
