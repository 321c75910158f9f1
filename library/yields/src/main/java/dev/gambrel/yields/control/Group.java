package dev.gambrel.yields.control;

import java.util.List;

/**
 * The figures of tests that have something in common: a cutter, a lot, a scale.
 *
 * @param name what they have in common
 * @param values one for each test, 1 or more
 */
public record Group(String name, List<Double> values) {
    /**
     * Copies the list and checks it.
     *
     * @throws IllegalArgumentException if there is none, or one is no number
     */
    public Group {
        values = new Readings(values).values();
    }
}
