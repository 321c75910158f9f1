package dev.gambrel.yields.composition;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * Three serum proteins of 23 ducklings, as shares: J. E. Mosimann, "On the compound multinomial distribution", Biometrika 49, 1962, the
 * data of A. Narayanan, "Algorithm AS 266", Applied Statistics 40, 1991.
 */
public final class Ducklings {
    private Ducklings() {}

    public static List<double[]> shares() {
        try (InputStream in = Ducklings.class.getResourceAsStream("ducklings.csv")) {
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
}
