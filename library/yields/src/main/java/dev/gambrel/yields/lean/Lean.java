package dev.gambrel.yields.lean;

import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;

/**
 * How lean some meat is. Lean by eye and lean by analysis are different things and never meet in one sum.
 *
 * @param percent per cent lean, from 0 to 100, and how far it strays in points
 * @param judged how it is found
 */
public record Lean(Estimate percent, Judged judged) {
    /**
     * Checks the figure.
     *
     * @throws IllegalArgumentException if it is below 0 % or above 100 %
     */
    public Lean {
        if (!(percent.mean() >= 0 && percent.mean() <= 100)) {
            throw new IllegalArgumentException("lean is from 0 % to 100 %, not " + percent.mean() + " %");
        }
    }

    /**
     * A figure whose spread is not stated.
     *
     * @param percent per cent lean, from 0 to 100
     * @param judged how it is found
     * @return the lean
     * @throws IllegalArgumentException if it is below 0 % or above 100 %
     */
    public static Lean of(double percent, Judged judged) {
        return new Lean(new Estimate(percent, Spread.NOT_STATED), judged);
    }
}
