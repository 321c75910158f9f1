package dev.gambrel.yields.table;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class LargestRemainderLaws {
    @Property
    void parts_add_up_and_stay_within_a_step(
            @ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = 0, max = 5000) Double> parts, @ForAll boolean up) {
        double[] exact = parts.stream().mapToDouble(Double::doubleValue).toArray();
        double sum = Arrays.stream(exact).sum();
        long total = (long) (up ? Math.ceil(sum) : Math.floor(sum));
        long[] steps = LargestRemainder.apportion(exact, total);
        assertEquals(total, Arrays.stream(steps).sum());
        for (int i = 0; i < exact.length; i++) {
            assertTrue(Math.abs(steps[i] - exact[i]) < 1 + 1e-6);
        }
    }

    /** Worked scene of the design, 3: three equal parts of 10.00. */
    @Example
    void the_first_of_three_equal_parts_takes_the_odd_step() {
        double third = 1000 / 3.0;
        assertArrayEquals(
                new long[] {334, 333, 333}, LargestRemainder.apportion(new double[] {third, third, third}, 1000));
        double other = 1000 - 2 * third;
        assertArrayEquals(
                new long[] {334, 333, 333}, LargestRemainder.apportion(new double[] {third, third, other}, 1000));
    }

    /** Worked scene of the design, 3: the haunch to 0.01 kg; plain rounding would total 11.21. */
    @Example
    void the_haunch_adds_up_to_its_printed_weight() {
        double[] exact = {
            100.962, 123.398, 72.917, 78.526, 4.4872, 151.443, 224.360, 157.052, 62.8208, 44.872, 39.263, 5.609, 56.090
        };
        long[] steps = {101, 123, 73, 79, 5, 151, 224, 157, 63, 45, 39, 6, 56};
        assertEquals(1121, Arrays.stream(exact).mapToLong(Math::round).sum());
        assertArrayEquals(steps, LargestRemainder.apportion(exact, 1122));
    }

    @Example
    void rounding_in_the_last_bits_moves_nothing() {
        assertArrayEquals(new long[] {1, 2}, LargestRemainder.apportion(new double[] {0.9999999999999, 2}, 3));
        assertArrayEquals(new long[] {0, 0}, LargestRemainder.apportion(new double[] {0, 0}, 0));
    }

    @Example
    void parts_cannot_add_up_to_something_else() {
        assertThrows(IllegalArgumentException.class, () -> LargestRemainder.apportion(new double[] {1, 2}, 6));
    }
}
