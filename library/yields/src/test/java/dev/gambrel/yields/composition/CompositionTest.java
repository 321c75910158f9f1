package dev.gambrel.yields.composition;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The composition 0.1, 0.3, 0.4, 0.2 and what is made of it is the printed example of the documentation of scikit-bio's module of
 * compositions (from memory), worked out anew.
 */
class CompositionTest {
    private static final Composition EXAMPLE = Composition.of(0.1, 0.3, 0.4, 0.2);

    private static double[] shares(Composition composition) {
        return IntStream.range(0, composition.size())
                .mapToDouble(composition::share)
                .toArray();
    }

    @Test
    void centred_log_ratios_of_the_printed_example() {
        assertArrayEquals(new double[] {-0.794513, 0.304099, 0.591781, -0.101366}, EXAMPLE.clr(), 1e-6);
    }

    @Test
    void isometric_log_ratios_of_the_printed_example() {
        assertArrayEquals(new double[] {-0.7768362, -0.68339802, 0.11704769}, EXAMPLE.ilr(), 1e-8);
    }

    @Test
    void perturbation_of_the_printed_example() {
        Composition by = Composition.of(1, 1, 2, 2);
        assertArrayEquals(new double[] {0.0625, 0.1875, 0.5, 0.25}, shares(EXAMPLE.perturbedBy(by)), 1e-12);
    }

    @Test
    void powering_of_the_printed_example() {
        assertArrayEquals(
                new double[] {0.23059566, 0.25737316, 0.26488486, 0.24714631}, shares(EXAMPLE.poweredBy(0.1)), 1e-8);
    }

    /** By hand: √½ ln (0.1 / 0.3) of two parts; to equal parts it is the length of the centred log-ratios. */
    @Test
    void the_distance_of_two_compositions_is_that_of_their_ratios() {
        assertEquals(
                Math.abs(Math.sqrt(0.5) * Math.log(1.0 / 3)),
                Composition.of(1, 3).distanceTo(Composition.of(1, 1)),
                1e-12);
        assertEquals(1.041253, EXAMPLE.distanceTo(Composition.of(1, 1, 1, 1)), 1e-6);
    }

    @Test
    void kilograms_and_per_cent_of_the_same_parts_are_the_same_composition() {
        assertArrayEquals(shares(EXAMPLE), shares(Composition.of(2.2, 6.6, 8.8, 4.4)), 1e-15);
    }

    @Test
    void a_part_of_nothing_has_no_ratio() {
        Exception refused = assertThrows(IllegalArgumentException.class, () -> Composition.of(0.5, 0, 0.5));
        assertEquals("part 2 is 0.0: a share of a composition is more than 0", refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> Composition.of(0.5, -0.1, 0.6));
        assertThrows(IllegalArgumentException.class, () -> Composition.of(0.5, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Composition.of(1));
    }

    @Test
    void compositions_of_different_parts_are_not_compared() {
        assertThrows(IllegalArgumentException.class, () -> EXAMPLE.distanceTo(Composition.of(1, 2)));
        assertThrows(IllegalArgumentException.class, () -> EXAMPLE.perturbedBy(Composition.of(1, 2)));
    }

    /** Specimen 18 of hongite is printed with parts that add up to 99.9: J. Aitchison, 1986, appendix D. */
    @Test
    void printed_parts_may_miss_the_whole_by_their_rounding() {
        Composition specimen = Composition.printed(100, 0.1, 49.5, 32.3, 3.1, 8.7, 6.3);
        assertEquals(1, IntStream.range(0, 5).mapToDouble(specimen::share).sum(), 1e-15);
        assertEquals(0.495 / 0.999, specimen.share(0), 1e-15);
        assertArrayEquals(shares(Composition.of(50.25, 50)), shares(Composition.printed(100, 0.25, 50.25, 50)), 1e-15);
    }

    @Test
    void printed_parts_that_miss_the_whole_by_more_are_refused() {
        Exception refused = assertThrows(
                IllegalArgumentException.class, () -> Composition.printed(100, 0.1, 49.5, 32.3, 3.1, 8.7, 6.0));
        assertTrue(refused.getMessage().contains("rounding may be off by 0.25"), refused.getMessage());
    }
}
