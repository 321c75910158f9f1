package dev.gambrel.yields.houseshares;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.List;
import org.junit.jupiter.api.Test;

class TestsClosedTest {
    private static final List<TradeName> PARTS = Legs.parts(3);
    private static final TradeName LAST = PARTS.get(2);
    private static final List<CuttingTest> ONE_WITHOUT =
            Legs.list(new double[] {6, 3, 1}, new double[] {6, 4, 0}, new double[] {5, 4, 1});

    @Test
    void a_part_that_one_test_did_not_give_means_another_way_of_working() {
        TestsClosed.TwoWays ways = assertInstanceOf(TestsClosed.TwoWays.class, TestsClosed.of(PARTS, ONE_WITHOUT));
        assertEquals(List.of(new PartOfNothing("test 2", LAST)), ways.nothing());
    }

    @Test
    void tests_that_all_gave_every_part_are_taken_as_they_are() {
        List<CuttingTest> tests = List.of(ONE_WITHOUT.get(0), ONE_WITHOUT.get(2));
        TestsClosed as = new TestsClosed.Together(new CutTests(PARTS, tests), List.of(), 0);
        assertEquals(as, TestsClosed.of(PARTS, tests));
        TestsClosed.Together fine = assertInstanceOf(TestsClosed.Together.class, TestsClosed.of(PARTS, tests, 0.005));
        assertEquals(List.of(), fine.replaced());
        assertEquals(0, fine.kilograms());
        assertEquals(6, fine.tests().tests().get(0).weights().mean(0));
    }

    /** By hand: 65 % of 20 g, and the others lessened so that 10 kg stay 10 kg. */
    @Test
    void a_part_too_light_for_the_scale_is_put_below_its_division_and_said() {
        TestsClosed.Together together =
                assertInstanceOf(TestsClosed.Together.class, TestsClosed.of(PARTS, ONE_WITHOUT, 0.02));
        assertEquals(List.of(new PartOfNothing("test 2", LAST)), together.replaced());
        assertEquals(0.013, together.kilograms(), 1e-15);
        CuttingTest second = together.tests().tests().get(1);
        assertEquals(0.013, second.weights().mean(2), 1e-15);
        assertEquals(10, second.kilograms(), 1e-12);
        assertEquals(6.0 / 4, second.weights().mean(0) / second.weights().mean(1), 1e-12);
        assertEquals(1, together.tests().tests().get(0).weights().mean(2));
    }

    @Test
    void the_error_of_the_scale_goes_with_the_weights() {
        Spread tenGrams = new Spread.Stated(0.01);
        CuttingTest weighed = CuttingTest.weighed(
                "one", List.of(new Estimate(6, tenGrams), new Estimate(4, tenGrams), new Estimate(0, tenGrams)));
        TestsClosed.Together together = assertInstanceOf(
                TestsClosed.Together.class, TestsClosed.of(PARTS, List.of(ONE_WITHOUT.get(0), weighed), 0.02));
        Estimate first = together.tests().tests().get(1).weights().figure(0);
        assertEquals(6 * 0.9987, first.mean(), 1e-12);
        assertEquals(0.01 * 0.9987, Math.sqrt(first.spread().variance()), 1e-12);
    }

    @Test
    void a_part_that_no_test_gave_is_not_too_light_but_missing() {
        List<CuttingTest> never = Legs.list(new double[] {6, 4, 0}, new double[] {5, 4, 0});
        TestsClosed.TwoWays ways = assertInstanceOf(TestsClosed.TwoWays.class, TestsClosed.of(PARTS, never, 0.02));
        assertEquals(2, ways.nothing().size());
    }

    @Test
    void a_scale_that_is_too_coarse_or_has_no_division_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> TestsClosed.of(PARTS, ONE_WITHOUT, 20));
        assertThrows(IllegalArgumentException.class, () -> TestsClosed.of(PARTS, ONE_WITHOUT, 0));
        assertThrows(IllegalArgumentException.class, () -> TestsClosed.of(PARTS, ONE_WITHOUT, Double.NaN));
    }
}
