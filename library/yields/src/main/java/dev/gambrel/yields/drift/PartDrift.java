package dev.gambrel.yields.drift;

import dev.gambrel.yields.control.ChartAnswer;
import java.util.List;

/**
 * How the share of one part moves.
 *
 * @param part its line of the plan
 * @param percents its share of its cut in each test in which that is known, in the order of time
 * @param single the chart of single tests, for large and sudden changes; or why there is none
 * @param average the chart of their moving average, for small changes that last; or why there is none
 */
public record PartDrift(int part, List<Double> percents, ChartAnswer single, ChartAnswer average) {
    /** Copies the list. */
    public PartDrift {
        percents = List.copyOf(percents);
    }

    static PartDrift of(int part, List<Double> percents, Baseline baseline) {
        return new PartDrift(part, percents, baseline.single(percents), baseline.average(percents));
    }
}
