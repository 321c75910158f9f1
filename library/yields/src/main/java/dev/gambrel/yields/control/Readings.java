package dev.gambrel.yields.control;

import java.util.List;

/** One figure of several tests, in the order of time. */
record Readings(List<Double> values) {
    Readings {
        values = List.copyOf(values);
        if (values.isEmpty() || !values.stream().allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("1 figure or more, each a number: " + values);
        }
    }

    int size() {
        return values.size();
    }

    double at(int index) {
        return values.get(index);
    }

    /** Exactly the value where all are the same. */
    double mean() {
        double first = at(0);
        double sum = 0;
        for (double value : values) {
            sum += value - first;
        }
        return first + sum / size();
    }

    /** With n − 1 below the sum of squares; of one value NaN. */
    double variance() {
        double mean = mean();
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return squares / (size() - 1);
    }

    boolean neverVary() {
        return values.stream().allMatch(value -> value == at(0));
    }
}
