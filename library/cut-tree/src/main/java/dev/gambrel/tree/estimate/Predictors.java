package dev.gambrel.tree.estimate;

import java.util.List;

/**
 * What is measured on a carcass and what is estimated from it.
 *
 * @param measures what is measured, in the order declared
 * @param equations what is estimated, in the order declared
 */
public record Predictors(List<Measure> measures, List<Equation> equations) {
    /** Nothing is measured. */
    public static final Predictors NONE = new Predictors(List.of(), List.of());

    /** Copies the lists. */
    public Predictors {
        measures = List.copyOf(measures);
        equations = List.copyOf(equations);
    }
}
