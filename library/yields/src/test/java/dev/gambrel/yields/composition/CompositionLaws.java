package dev.gambrel.yields.composition;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class CompositionLaws {
    private static Composition of(List<Double> parts) {
        return Composition.of(parts.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static double[] shares(Composition composition) {
        return IntStream.range(0, composition.size())
                .mapToDouble(composition::share)
                .toArray();
    }

    private static double length(double[] vector) {
        return Math.sqrt(Arrays.stream(vector).map(each -> each * each).sum());
    }

    @Property
    void log_ratios_lead_back_to_the_shares(
            @ForAll @Size(min = 2, max = 12) List<@DoubleRange(min = 0.01, max = 1e6) Double> parts) {
        Composition composition = of(parts);
        assertArrayEquals(shares(composition), shares(Composition.ofIlr(composition.ilr())), 1e-12);
        assertEquals(0, Arrays.stream(composition.clr()).sum(), 1e-12 * parts.size());
        assertEquals(length(composition.clr()), length(composition.ilr()), 1e-10);
    }

    @Property
    void distances_are_kept_by_log_ratios_and_by_any_perturbation(
            @ForAll @Size(5) List<@DoubleRange(min = 0.01, max = 1e3) Double> a,
            @ForAll @Size(5) List<@DoubleRange(min = 0.01, max = 1e3) Double> b,
            @ForAll @Size(5) List<@DoubleRange(min = 0.01, max = 1e3) Double> by) {
        double distance = of(a).distanceTo(of(b));
        double[] apart = of(a).ilr();
        double[] other = of(b).ilr();
        Arrays.setAll(apart, i -> apart[i] - other[i]);
        assertEquals(length(apart), distance, 1e-10);
        assertEquals(distance, of(b).distanceTo(of(a)), 1e-12);
        assertEquals(distance, of(a).perturbedBy(of(by)).distanceTo(of(b).perturbedBy(of(by))), 1e-10);
        assertEquals(3 * distance, of(a).poweredBy(-3).distanceTo(of(b).poweredBy(-3)), 1e-10);
    }

    @Property
    void a_power_of_two_is_a_perturbation_by_itself(
            @ForAll @Size(5) List<@DoubleRange(min = 0.01, max = 1e3) Double> parts) {
        assertArrayEquals(shares(of(parts).poweredBy(2)), shares(of(parts).perturbedBy(of(parts))), 1e-12);
        Composition equal = of(parts).poweredBy(0);
        assertArrayEquals(new double[] {0.2, 0.2, 0.2, 0.2, 0.2}, shares(equal), 1e-15);
    }

    /** The mean square of the distances from the centre, n − 1 as divisor: Aitchison, 1986. */
    @Property
    void the_total_variance_is_how_far_compositions_lie_from_their_centre(
            @ForAll @Size(min = 2, max = 8) List<@Size(4) List<@DoubleRange(min = 0.01, max = 100) Double>> rows) {
        CompositionSample sample =
                new CompositionSample(rows.stream().map(CompositionLaws::of).toList());
        double squares = sample.compositions().stream()
                .mapToDouble(each -> Math.pow(each.distanceTo(sample.centre()), 2))
                .sum();
        assertEquals(squares / (rows.size() - 1), sample.totalVariance(), 1e-9);
    }
}
