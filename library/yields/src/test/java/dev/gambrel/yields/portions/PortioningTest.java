package dev.gambrel.yields.portions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PortioningTest {
    private static Portioning of(double mean, double sd, double target) {
        return new Portioning(stated(mean, sd), target);
    }

    private static Estimate stated(double mean, double sd) {
        return new Estimate(mean, new Spread.Stated(sd));
    }

    /** The tail sum (Feller, volume 1), computed for Gambrel by another program and confirmed by 20,000,000 draws. */
    @ParameterizedTest
    @CsvSource({
        "3.6, 0.25, 0.25, 13.900000001, 1.040832995",
        "4.5, 0.3, 0.227, 19.323788546, 1.352746330",
        "2.0, 0.1, 0.25, 7.500000000, 0.524252758"
    })
    void the_number_of_portions_is_less_than_the_quotient(
            double mean, double sd, double target, double number, double deviation) {
        Portioning portions = of(mean, sd, target);
        assertEquals(number, portions.expectedNumber(), 1e-8);
        assertEquals(deviation, portions.numberDeviation().orElseThrow(), 1e-8);
    }

    /** Chances of the normal distribution, computed for Gambrel by another program. */
    @ParameterizedTest
    @CsvSource({"12, 0.991802464", "13, 0.919243341", "14, 0.655421742", "15, 0.274253118"})
    void more_portions_are_less_certain(int number, double chance) {
        assertEquals(chance, of(3.6, 0.25, 0.25).chanceOfAtLeast(number).orElseThrow(), 1e-9);
    }

    /** 3.6 - 0.25 × 13.9, from the number above. */
    @Test
    void half_a_portion_is_left_over_on_average() {
        assertEquals(0.125, of(3.6, 0.25, 0.25).expectedRemainder(), 1e-9);
    }

    /** The Fourier series of the saw-tooth gives the same as the tail sum; 19.323788546 computed for Gambrel by another program. */
    @Test
    void two_ways_of_counting_agree() {
        assertEquals(19.323788546, Fourier.expectedNumber(4.5, 0.3, 0.227, 0, 0), 1e-9);
        assertEquals(
                Fourier.expectedNumber(4.5, 0.3, 0.227, 0, 0),
                of(4.5, 0.3, 0.227).expectedNumber(),
                1e-12);
    }

    /** 12 have a chance of 99 %, 13 of 92 %, as above. */
    @Test
    void what_is_promised_is_what_comes_19_times_in_20() {
        assertEquals(12, of(3.6, 0.25, 0.25).promised(0.95).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"1.35, 0.15, 9", "0.9, 0.18, 5", "0.89, 0.18, 4", "0.1, 0.18, 0", "0.6, 0.2, 3"})
    void a_piece_that_is_just_enough_gives_its_last_portion(double mean, double target, int number) {
        assertEquals(number, of(mean, 0, target).expectedNumber());
        assertEquals(1, of(mean, 0, target).chanceOfAtLeast(number).orElseThrow());
        assertEquals(0, of(mean, 0, target).chanceOfAtLeast(number + 1).orElseThrow());
        assertEquals(0, of(mean, 0, target).numberDeviation().orElseThrow());
    }

    @Test
    void without_a_spread_the_number_is_that_of_a_mean_piece() {
        Portioning portions = new Portioning(new Estimate(1.1218, Spread.NOT_STATED), 0.18);
        assertTrue(portions.isFromMeanAlone());
        assertEquals(6, portions.expectedNumber());
        assertEquals(1.1218 - 6 * 0.18, portions.expectedRemainder(), 1e-12);
        assertTrue(portions.chanceOfAtLeast(6).isEmpty());
        assertTrue(portions.promised(0.95).isEmpty());
    }

    @Test
    void crumbs_are_counted_as_fast_as_steaks() {
        assertEquals(3.6 / 1e-9 - 0.5, of(3.6, 0.25, 1e-9).expectedNumber(), 1e-3);
        double justAbove = of(3.6, 0.25, 0.25 / 454).expectedNumber() - 3.6 * 454 / 0.25;
        double justBelow = of(3.6, 0.25, 0.25 / 456).expectedNumber() - 3.6 * 456 / 0.25;
        assertEquals(justAbove, justBelow, 1e-6);
    }

    /** The tail sum with cuts and ends, computed for Gambrel by another program and confirmed by 20,000,000 draws. */
    @Test
    void cuts_and_end_pieces_cost_portions() {
        Portioning portions = new Portioning(stated(5.2, 0.4), 0.3, 0.004, 0.15, 0.3);
        assertEquals(16.125, portions.expectedNumber(), 1e-8);
        assertEquals(1.347083989, portions.numberDeviation().orElseThrow(), 1e-8);
        double cuts = portions.expectedNumber() - 1;
        assertEquals(0.004 * cuts, portions.expectedLoss(), 1e-9);
        assertEquals(5.2 - 0.3 * 16.125 - 0.004 * cuts, portions.expectedRemainder(), 1e-8);
    }

    /** 7 × 25 + 6 × 2 = 187. */
    @ParameterizedTest
    @CsvSource({"187, 7", "186.9, 6", "213.9, 7", "214, 8", "25, 1", "24.9, 0"})
    void n_slices_need_n_thicknesses_and_one_cut_less(double length, int number) {
        assertEquals(number, new Portioning(stated(length, 0), 25, 2, 0, 25).expectedNumber());
    }

    /** Six of 180 g and 20 g over; with 150 g over, the last counts where 150 g is the smallest. */
    @ParameterizedTest
    @CsvSource({"1100, 6, 20", "1229, 6, 149", "1230, 7, 0", "1259, 7, 0", "1260, 7, 0", "1270, 7, 10"})
    void a_last_portion_counts_from_the_smallest_on(double grams, int number, double left) {
        Portioning portions = new Portioning(stated(grams, 0), 180, 0, 0, 150);
        assertEquals(number, portions.expectedNumber());
        assertEquals(left, portions.expectedRemainder(), 1e-9);
    }

    /** By summing over a fine grid of pieces: normal, truncated at 0, and between the two. */
    @ParameterizedTest
    @CsvSource({
        "5.2, 0.4, 0.3, 0.004, 0.15, 0.2",
        "0.3, 0.15, 0.18, 0, 0, 0.15",
        "0.3, 0.11, 0.18, 0, 0, 0.15",
        "0.3, 0.6, 0.18, 0, 0.02, 0.15",
        "2.0, 0.05, 0.25, 0.01, 0, 0"
    })
    void what_is_left_with_a_smaller_last_is_what_a_sum_over_all_pieces_gives(
            double mean, double sd, double each, double between, double ends, double last) {
        PieceSize size = PieceSize.of(mean, sd);
        double left = 0;
        double step = sd / 20_000;
        for (double x = 0; x < size.largest(); x += step) {
            double middle = x + step / 2;
            left += size.between(x, x + step)
                    * new Portioning(stated(middle, 0), each, between, ends, last).expectedRemainder();
        }
        assertEquals(left, new Portioning(stated(mean, sd), each, between, ends, last).expectedRemainder(), 2e-5);
    }
}
