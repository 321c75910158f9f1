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
            @ForAll @DoubleRange(min = 0.01, max = 1.5) double cv,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double each,
            @ForAll @DoubleRange(max = 0.05) double between,
            @ForAll @DoubleRange(max = 0.2) double ends) {
        Portioning portions = of(mean, cv * mean, each, between, ends, each);
        double all = each * portions.expectedNumber() + portions.expectedLoss() + portions.expectedRemainder();
        assertEquals(mean, all, 1e-12 * mean);
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

    /** Slices of wafers as well: a piece shorter than its ends is left whole, however fine the slices. */
    @Property
    void no_more_is_left_than_there_was(
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double cv,
            @ForAll @IntRange(min = 1, max = 6) int fine,
            @ForAll @DoubleRange(max = 1.5) double ends,
            @ForAll @DoubleRange(max = 1) double last) {
        double each = Math.pow(10, -fine);
        double left = of(1, cv, each, 0, ends, last * each).expectedRemainder();
        assertTrue(left <= 1 + 1e-6, () -> "left " + left);
    }

    /** A heavier carcass scales mean and spread of its pieces alike. */
    @Property
    void a_heavier_carcass_gives_no_fewer(
            @ForAll @DoubleRange(min = 0.05, max = 5) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 2) double cv,
            @ForAll @DoubleRange(min = 1, max = 1.5) double heavier,
            @ForAll @DoubleRange(min = 0.05, max = 1) double each,
            @ForAll @DoubleRange(max = 0.2) double ends) {
        Portioning light = of(mean, cv * mean, each, 0, ends, each);
        Portioning heavy = of(heavier * mean, heavier * cv * mean, each, 0, ends, each);
        assertTrue(heavy.expectedNumber() >= light.expectedNumber() - 1e-12);
        assertTrue(heavy.chanceOfAtLeast(2).orElseThrow()
                >= light.chanceOfAtLeast(2).orElseThrow() - 1e-15);
    }

    /** Of one spread a larger mean gives more, as long as a piece is normal. */
    @Property
    void a_larger_mean_gives_no_fewer(
            @ForAll @DoubleRange(min = 1, max = 5) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double sd,
            @ForAll @DoubleRange(max = 1) double heavier,
            @ForAll @DoubleRange(min = 0.05, max = 1) double each) {
        double light = of(mean, sd, each, 0, 0, each).expectedNumber();
        assertTrue(of(mean + heavier, sd, each, 0, 0, each).expectedNumber() >= light - 1e-12);
    }

    @Property
    void more_are_less_certain_and_all_chances_are_the_number(
            @ForAll @DoubleRange(min = 0.05, max = 10) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 1.5) double cv,
            @ForAll @DoubleRange(min = 0.05, max = 1) double each,
            @ForAll @DoubleRange(max = 0.05) double between,
            @ForAll @DoubleRange(max = 0.2) double ends) {
        Portioning portions = of(mean, cv * mean, each, between, ends, each);
        NumberOfPortions number = portions.number().orElseThrow();
        double sum = 0;
        double chances = number.chanceOf(0);
        for (int n = 1; n < 10_000 && number.chanceOfAtLeast(n) > 0; n++) {
            assertTrue(number.chanceOfAtLeast(n) <= number.chanceOfAtLeast(n - 1));
            assertEquals(portions.chanceOfAtLeast(n).orElseThrow(), number.chanceOfAtLeast(n), 1e-12);
            assertEquals(1, number.chanceOfAtLeast(n) + number.chanceOfAtMost(n - 1), 1e-12);
            sum += number.chanceOfAtLeast(n);
            chances += number.chanceOf(n);
        }
        assertEquals(1, chances, 1e-12);
        assertEquals(portions.expectedNumber(), sum, 1e-12 * (1 + sum));
        assertEquals(sum, number.expected(), 1e-12 * (1 + sum));
        double variance = Math.pow(portions.numberDeviation().orElseThrow(), 2);
        assertEquals(variance, Math.pow(number.deviation(), 2), 1e-12 * (1 + sum) * (1 + sum));
    }

    /** The series has its period in the piece, so every piece must give some. */
    @Property
    void the_sum_of_chances_is_the_fourier_series(
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double each,
            @ForAll @DoubleRange(max = 0.02) double between,
            @ForAll @DoubleRange(max = 0.2) double ends,
            @ForAll @DoubleRange(min = 3, max = 10) double mean,
            @ForAll @DoubleRange(min = 0.02, max = 0.3) double sd) {
        double number = of(mean, sd, each, between, ends, each).expectedNumber();
        assertEquals(Fourier.expectedNumber(mean, sd, each, between, ends), number, 1e-12 * Math.max(1, number));
    }

    @Property
    void what_is_scaled_gives_as_many(
            @ForAll @DoubleRange(min = 0.05, max = 10) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 1.5) double cv,
            @ForAll @DoubleRange(min = 0.05, max = 1) double each,
            @ForAll @DoubleRange(max = 0.05) double between,
            @ForAll @DoubleRange(min = 0.01, max = 100) double scale) {
        Portioning one = of(mean, cv * mean, each, between, 0.01, each);
        Portioning other =
                of(scale * mean, scale * cv * mean, scale * each, scale * between, scale * 0.01, scale * each);
        assertEquals(one.expectedNumber(), other.expectedNumber(), 1e-9);
        assertEquals(
                one.chanceOfAtLeast(3).orElseThrow(), other.chanceOfAtLeast(3).orElseThrow(), 1e-9);
    }

    @Property
    void less_is_promised_the_surer_and_more_from_more_pieces(
            @ForAll @DoubleRange(min = 0.5, max = 5) double mean,
            @ForAll @DoubleRange(min = 0.02, max = 0.6) double cv,
            @ForAll @DoubleRange(min = 0.1, max = 1) double each,
            @ForAll @IntRange(min = 1, max = 30) int pieces,
            @ForAll @DoubleRange(max = 0.1) double doubt,
            @ForAll @DoubleRange(min = 0.5, max = 0.98) double certainty) {
        Portioning one = of(mean, cv * mean, each, 0, 0, each);
        NumberOfPortions some = new FromSeveral(pieces, 1, 1).of(one, doubt);
        NumberOfPortions more = new FromSeveral(pieces + 1, 1, 1).of(one, doubt);
        long promised = some.promised(certainty);
        assertTrue(some.promised(certainty + 0.015) <= promised);
        assertTrue(more.promised(certainty) >= promised);
        assertTrue(promised == 0 || some.chanceOfAtLeast(promised) >= certainty);
        assertTrue(some.chanceOfAtLeast(promised + 1) < certainty);
        assertEquals(promised, new FromSeveral(pieces, 1, 1).of(one, doubt).promised(certainty));
    }
}
