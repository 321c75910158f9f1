package dev.gambrel.yields.control;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Figures of tests that were not weighed alike well, such as lambs and bullocks on one scale, made comparable: what each is off the
 * mean over its own standard deviation. What is charted is then a number of standard deviations.
 *
 * @param mean the mean, each figure counting by 1 over its variance
 * @param values one for each test
 */
public record Standardised(double mean, List<Double> values) {
    /** Copies the list. */
    public Standardised {
        values = List.copyOf(values);
    }

    /**
     * Standardises figures.
     *
     * @param values in the order of time, 1 or more
     * @param deviations the standard deviation of each, more than 0
     * @return what each is off
     * @throws IllegalArgumentException if they are not as many, or one is no number, or a standard deviation is not above 0
     */
    public static Standardised of(List<Double> values, List<Double> deviations) {
        Readings readings = new Readings(values);
        if (deviations.size() != values.size() || !deviations.stream().allMatch(sd -> sd > 0 && Double.isFinite(sd))) {
            throw new IllegalArgumentException("each figure has a standard deviation above 0: " + deviations);
        }
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < readings.size(); i++) {
            double weight = 1 / (deviations.get(i) * deviations.get(i));
            sum += weight * (readings.at(i) - readings.at(0));
            weights += weight;
        }
        double mean = readings.at(0) + sum / weights;
        return new Standardised(
                mean,
                IntStream.range(0, readings.size())
                        .mapToObj(i -> (readings.at(i) - mean) / deviations.get(i))
                        .toList());
    }
}
