package dev.gambrel.yields.control;

import dev.gambrel.yields.figure.Interval;
import java.util.function.Function;
import org.apache.commons.statistics.distribution.TDistribution;

/** Figures charted against the level that they themselves show, where they show one. */
final class OwnLevel {
    private static final double UPPER = 0.975;

    private OwnLevel() {}

    static ChartAnswer chart(Readings readings, Function<ProcessLevel, ControlChart> chart) {
        int n = readings.size();
        double mean = readings.mean();
        if (n == 1) {
            return new ChartAnswer.OneTest(mean);
        } else if (readings.neverVary()) {
            return new ChartAnswer.NeverVaries(n, mean);
        } else if (n < ChartAnswer.FEWEST) {
            double half = TDistribution.of(n - 1.0).inverseCumulativeProbability(UPPER)
                    * Math.sqrt(readings.variance() * (1 + 1.0 / n));
            return new ChartAnswer.TooFew(n, mean, new Interval(mean - half, mean + half));
        }
        double deviation = ProcessLevel.meanMovingRange(readings) / ProcessLevel.RANGE_OF_TWO;
        return new ChartAnswer.Drawn(chart.apply(new ProcessLevel(mean, deviation)));
    }
}
