package dev.gambrel.yields.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.composition.Composition;
import dev.gambrel.yields.composition.CompositionSample;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler.NormalizedGaussian;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.FDistribution;
import org.junit.jupiter.api.Test;

class HotellingTest {
    private static final List<TradeName> PARTS =
            Stream.of("topside", "silverside", "femur").map(TradeName::of).toList();

    private final NormalizedGaussian normal =
            NormalizedGaussian.of(RandomSource.XO_RO_SHI_RO_128_PP.create(20_260_303L));

    private Composition leg() {
        return Composition.of(
                5 * Math.exp(0.03 * normal.sample()),
                4 * Math.exp(0.03 * normal.sample()),
                1.5 * Math.exp(0.05 * normal.sample()));
    }

    private CompositionSample legs(int number) {
        return new CompositionSample(Stream.generate(this::leg).limit(number).toList());
    }

    private static HotellingLevel level(CompositionSample sample) {
        return assertInstanceOf(HotellingLevel.class, HotellingLevel.of(PARTS, sample));
    }

    /** The formula in NIST/SEMATECH e-Handbook of Statistical Methods, 6.5.4.3; its value computed independently. */
    @Test
    void later_tests_have_the_published_limit() {
        assertEquals(28.1187532, new HotellingLimits(4, 20, 0.005).ofLaterTests(), 1e-5);
    }

    /**
     * A beta variable is pF / (m − p − 1) over 1 and this, with F of p and m − p − 1 degrees of freedom: so N. D. Tracy, J. C. Young and R. L.
     * Mason, 1992 (from memory). The value computed independently.
     */
    @Test
    void the_same_tests_have_a_limit_of_their_own() {
        double q = 4 / 15.0 * FDistribution.of(4, 15).inverseCumulativeProbability(0.995);
        HotellingLimits limits = new HotellingLimits(4, 20, 0.005);
        assertEquals(19 * 19 / 20.0 * q / (1 + q), limits.ofSameTests(), 1e-9);
        assertEquals(10.96446039, limits.ofSameTests(), 1e-7);
    }

    @Test
    void chance_alone_gives_as_many_signals_as_said() {
        int same = 0;
        int later = 0;
        int draws = 4_000;
        for (int draw = 0; draw < draws; draw++) {
            HotellingLevel level = level(legs(10));
            same += level.ofItsTests(0.05).signals().size();
            later += level.ofLaterTests(legs(1), 0.05).signals().size();
        }
        assertEquals(0.05, same / (10.0 * draws), 4 * Math.sqrt(0.05 * 0.95 / (10.0 * draws)));
        assertEquals(0.05, later / (double) draws, 4 * Math.sqrt(0.05 * 0.95 / draws));
    }

    /** Two parts have one balance: T² is then the square of how many standard deviations it is off. */
    @Test
    void of_two_parts_it_is_the_square_of_one_balance() {
        List<Composition> tests = new ArrayList<>();
        for (double ratio : new double[] {1, 2, 3, 4, 5, 6, 7, 8}) {
            tests.add(Composition.of(Math.exp(ratio), 1));
        }
        HotellingLevel level = assertInstanceOf(
                HotellingLevel.class, HotellingLevel.of(PARTS.subList(0, 2), new CompositionSample(tests)));
        Composition off = Composition.of(Math.exp(10.5), 1);
        assertEquals(8, level.tests());
        assertEquals(36 / 6.0, level.squaredDistance(off), 1e-9);
        Contribution only = level.contributions(off).get(0);
        assertEquals(1, level.contributions(off).size());
        assertEquals(Math.sqrt(6), only.deviations(), 1e-9);
        assertEquals(1, only.part(), 1e-9);
        assertEquals("topside against silverside", only.words());
    }

    @Test
    void a_leg_with_much_bone_is_told_by_its_bone() {
        HotellingLevel level = level(legs(30));
        HotellingChart chart = level.ofLaterTests(
                new CompositionSample(List.of(Composition.of(5, 4, 1.5), Composition.of(5, 4, 2.2))),
                HotellingLimits.USUAL);
        Signal.OutOfShape signal = chart.signals().get(0);
        assertEquals(1, chart.signals().size());
        assertEquals(1, signal.index());
        assertEquals(chart.squared().get(1), signal.squared());
        assertEquals(chart.limit(), signal.limit());
        Contribution first = signal.contributions().get(0);
        assertEquals("femur against topside, silverside", first.words());
        assertTrue(first.deviations() > 4 && first.part() > 0.9 && first.part() <= 1, first.toString());
        assertEquals(6, signal.contributions().size());
    }

    @Test
    void few_tests_and_tests_that_never_vary_tell_no_level() {
        assertEquals(new HotellingAnswer.TooFew(7, 8), HotellingLevel.of(PARTS, legs(7)));
        CompositionSample same = new CompositionSample(Collections.nCopies(9, Composition.of(5, 4, 1.5)));
        assertEquals(new HotellingAnswer.NeverVaries(9), HotellingLevel.of(PARTS, same));
        CompositionSample halves = new CompositionSample(Collections.nCopies(9, Composition.of(0.3, 0.1)));
        assertEquals(new HotellingAnswer.NeverVaries(9), HotellingLevel.of(PARTS.subList(0, 2), halves));
        List<Composition> inStep = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double femur = 1.5 * Math.exp(0.05 * normal.sample());
            inStep.add(Composition.of(5 * Math.exp(0.03 * normal.sample()), 2 * femur, femur));
        }
        assertEquals(new HotellingAnswer.NeverVaries(12), HotellingLevel.of(PARTS, new CompositionSample(inStep)));
    }

    @Test
    void other_parts_and_impossible_limits_are_refused() {
        CompositionSample two = new CompositionSample(List.of(Composition.of(1, 2)));
        assertThrows(IllegalArgumentException.class, () -> HotellingLevel.of(PARTS, two));
        HotellingLevel level = level(legs(9));
        assertThrows(IllegalArgumentException.class, () -> level.squaredDistance(Composition.of(1, 2)));
        assertThrows(IllegalArgumentException.class, () -> level.ofItsTests(0));
        assertThrows(IllegalArgumentException.class, () -> new HotellingLimits(4, 5, 0.005));
        assertThrows(IllegalArgumentException.class, () -> new HotellingLimits(0, 5, 0.005));
        assertThrows(IllegalArgumentException.class, () -> new HotellingLimits(2, 8, 1));
    }
}
