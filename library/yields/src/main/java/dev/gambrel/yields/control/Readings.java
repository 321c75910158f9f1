package dev.gambrel.yields.control;

import java.util.List;

/** One figure of several tests, in the order of time. */
record Readings(List<Double> values) {
    /** Figures that differ by less, relative to the largest, differ by nothing but rounding. */
    private static final double ROUNDING = 1e-12;

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
        double largest = values.stream().mapToDouble(Math::abs).max().orElseThrow();
        return values.stream().allMatch(value -> Math.abs(value - at(0)) <= ROUNDING * largest);
    }
}
