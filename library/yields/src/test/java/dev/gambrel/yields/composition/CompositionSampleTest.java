package dev.gambrel.yields.composition;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Hongite and kongite, 25 specimens of 5 minerals each in per cent: J. Aitchison, The Statistical Analysis of Compositional Data,
 * Chapman and Hall, 1986, appendix D. What is expected of them is computed.
 */
class CompositionSampleTest {
    private static final CompositionSample HONGITE = read("hongite.csv");
    private static final CompositionSample KONGITE = read("kongite.csv");

    private static CompositionSample read(String name) {
        return new CompositionSample(printed(name).stream()
                .map(parts -> Composition.printed(100, 0.1, parts))
                .toList());
    }

    private static List<double[]> printed(String name) {
        try (InputStream in = CompositionSampleTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static double[] percent(Composition composition) {
        return IntStream.range(0, composition.size())
                .mapToDouble(i -> 100 * composition.share(i))
                .toArray();
    }

    @Test
    void the_centre_is_the_closed_geometric_mean() {
        assertArrayEquals(
                new double[] {48.941415, 21.966082, 9.881294, 10.405382, 8.805827}, percent(HONGITE.centre()), 1e-5);
        assertArrayEquals(
                new double[] {48.591693, 20.068091, 11.428450, 10.472702, 9.439063}, percent(KONGITE.centre()), 1e-5);
    }

    @Test
    void the_arithmetic_mean_lies_elsewhere() {
        double[] mean = new double[5];
        for (double[] specimen : printed("hongite.csv")) {
            Arrays.setAll(mean, i -> mean[i] + specimen[i] / 25);
        }
        assertArrayEquals(new double[] {44.296, 22.936, 14.840, 9.620, 8.304}, mean, 1e-9);
    }

    /** Specimen 18 alone misses 100, by 0.1. */
    @Test
    void one_specimen_of_hongite_is_printed_to_less_than_the_whole() {
        List<double[]> printed = printed("hongite.csv");
        for (int i = 0; i < printed.size(); i++) {
            assertEquals(i == 17 ? 99.9 : 100, Arrays.stream(printed.get(i)).sum(), 1e-9);
        }
    }

    /** 1.62367104 with n as divisor. */
    @Test
    void the_total_variance_has_one_less_than_the_number_of_specimens_for_divisor() {
        assertEquals(1.69132400, HONGITE.totalVariance(), 1e-7);
        assertEquals(1.62367104, HONGITE.totalVariance() * 24 / 25, 1e-7);
        assertEquals(1.76947634, KONGITE.totalVariance(), 1e-7);
    }

    /** By hand: ln 1, ln 4 and ln 16 have the variance (ln 4)². */
    @Test
    void the_variation_of_two_parts_is_that_of_the_logarithm_of_their_ratio() {
        CompositionSample three = new CompositionSample(
                List.of(Composition.of(1, 1, 5), Composition.of(4, 1, 5), Composition.of(16, 1, 5)));
        double square = Math.pow(Math.log(4), 2);
        assertArrayEquals(new double[] {0, square, square}, three.variation()[0], 1e-12);
        assertArrayEquals(new double[] {square, 0, 0}, three.variation()[1], 1e-12);
        assertEquals(4 * square / 6, three.totalVariance(), 1e-12);
    }

    @Test
    void one_composition_does_not_vary_and_none_is_no_sample() {
        CompositionSample one = new CompositionSample(List.of(Composition.of(1, 2)));
        assertArrayEquals(percent(Composition.of(1, 2)), percent(one.centre()), 1e-12);
        assertThrows(IllegalStateException.class, one::totalVariance);
        assertThrows(IllegalArgumentException.class, () -> new CompositionSample(List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new CompositionSample(List.of(Composition.of(1, 2), Composition.of(1, 2, 3))));
    }
}
