package dev.gambrel.yields.portions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class PortioningLaws {
    private static Portioning of(double mean, double sd, double each, double between, double ends, double last) {
        return new Portioning(new Estimate(mean, new Spread.Stated(sd)), each, between, ends, last);
    }

    /** In whole millimetres, so that both sides are exact. */
    @Property
    void n_slices_fit_and_one_more_does_not(
            @ForAll @IntRange(min = 1, max = 100_000) int length,
            @ForAll @IntRange(min = 1, max = 500) int thickness,
            @ForAll @IntRange(max = 20) int kerf) {
        long n = (long) of(length, 0, thickness, kerf, 0, thickness).expectedNumber();
        assertTrue(n == 0 || n * thickness + (n - 1) * kerf <= length);
        assertTrue((n + 1) * thickness + n * kerf > length);
    }

    @Property
    void portions_cuts_and_what_is_left_are_the_piece(
            @ForAll @DoubleRange(min = 0.5, max = 20) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double cv,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double each,
            @ForAll @DoubleRange(max = 0.05) double between,
            @ForAll @DoubleRange(max = 0.2) double ends) {
        Portioning portions = of(mean, cv * mean, each, between, ends, each);
        double all = each * portions.expectedNumber() + portions.expectedLoss() + portions.expectedRemainder();
        assertEquals(mean, all, 1e-9 * mean);
        assertTrue(portions.expectedRemainder() <= ends + each + between + 1e-9 || portions.expectedNumber() < 1);
    }

    @Property
    void more_is_lost_where_more_is_cut_away(
            @ForAll @DoubleRange(min = 0.5, max = 20) double mean,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double each,
            @ForAll @DoubleRange(max = 0.05) double between) {
        double sd = 0.05 * mean;
        double plain = of(mean, sd, each, 0, 0, each).expectedNumber();
        assertTrue(of(mean, sd, each, between, 0, each).expectedNumber() <= plain + 1e-9);
        assertTrue(of(mean, sd, each, 0, 0.1, each).expectedNumber() <= plain + 1e-9);
        Portioning smaller = of(mean, sd, each, 0, 0, each / 2);
        assertTrue(smaller.expectedNumber() >= plain - 1e-9);
        assertTrue(smaller.expectedRemainder() <= of(mean, sd, each, 0, 0, each).expectedRemainder() + 1e-9);
    }
}
