package dev.gambrel.yields.portions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Draws pieces and counts their portions; what is worked out is within four standard errors of that. */
class PortionsMonteCarloTest {
    private static final int DRAWS = 200_000;

    private static Portioning of(double mean, double sd) {
        return new Portioning(new Estimate(mean, new Spread.Stated(sd)), 0.3, 0.004, 0.15, 0.3);
    }

    @Test
    void twelve_carcasses_with_two_alike_pieces_and_a_mean_in_doubt() {
        Random random = new Random(20_261_125);
        double[] drawn = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            double mean = 5.2 * (1 + 0.02 * random.nextGaussian());
            for (int carcass = 0; carcass < 12; carcass++) {
                drawn[d] += 2 * of(mean + 0.4 * random.nextGaussian(), 0).expectedNumber();
            }
        }
        agree(drawn, new FromSeveral(24, 2, 1).of(of(5.2, 0.4), 0.02));
    }

    /** Half its mean is what the piece strays by: it is drawn from the truncated normal by drawing again what is below 0. */
    @Test
    void six_pieces_that_stray_widely() {
        double below = -1.7280422299608436;
        double sd = 0.5489659646250584;
        Random random = new Random(20_261_126);
        double[] drawn = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            for (int piece = 0; piece < 6; piece++) {
                double z = random.nextGaussian();
                while (z < below) {
                    z = random.nextGaussian();
                }
                drawn[d] += of(sd * (z - below), 0).expectedNumber();
            }
        }
        agree(drawn, new FromSeveral(6, 1, 1).of(of(1, 0.5), 0));
    }

    private static void agree(double[] drawn, NumberOfPortions number) {
        double sum = 0;
        long enough = 0;
        long promised = number.promised(0.9);
        for (double each : drawn) {
            sum += each;
            enough += each >= promised ? 1 : 0;
        }
        double chance = number.chanceOfAtLeast(promised);
        assertEquals(sum / DRAWS, number.expected(), 4 * number.deviation() / Math.sqrt(DRAWS));
        assertEquals((double) enough / DRAWS, chance, 4 * Math.sqrt(chance * (1 - chance) / DRAWS));
    }
}
