package dev.gambrel.yields.drift;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.EwmaChart;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is said of chance, held against normal figures that were drawn. */
class PassedByChanceTest {
    private static final int RUNS = 4_000;
    private static final int LATER = 10;

    /** Drawn: how often later tests pass limits of first tests, against what is said of it; it is said to be above that by up to a half. */
    @Test
    void whatIsSaidOfChanceIsAboutWhatChanceDoes() {
        for (int first : new int[] {8, 20}) {
            Random random = new Random(20_261_130);
            long single = 0;
            long average = 0;
            for (int run = 0; run < RUNS; run++) {
                List<Double> values = new ArrayList<>();
                for (int i = 0; i < first + LATER; i++) {
                    values.add(50 + random.nextGaussian());
                }
                Baseline baseline = new Baseline.FirstTests(first);
                single += later(baseline.single(values), first);
                average += later(baseline.average(values), first);
            }
            double drawn = (double) single / (RUNS * LATER);
            double drawnAverage = (double) average / (RUNS * LATER);
            double said = PassedByChance.single(first);
            double saidOfAverage = PassedByChance.average(first, EwmaChart.USUAL);
            assertTrue(drawn <= said && said <= 1.6 * drawn, first + ": " + drawn + ", said " + said);
            assertTrue(
                    drawnAverage <= saidOfAverage && saidOfAverage <= 2.5 * drawnAverage,
                    first + ": " + drawnAverage + ", said " + saidOfAverage);
        }
    }

    private static long later(ChartAnswer answer, int first) {
        return ((ChartAnswer.Drawn) answer)
                .chart().signals().stream()
                        .filter(signal -> signal.index() >= first)
                        .count();
    }
}
