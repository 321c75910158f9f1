package dev.gambrel.yields.reconciliation;

import dev.gambrel.yields.figure.Estimate;

/**
 * Whether one cut adds up: its parts together less its own reading, after all that was weighed below was reconciled. These differences are
 * independent from cut to cut, and their squares in standard deviations add up to the chi-square of the sheet.
 *
 * @param cut the node
 * @param excess parts less reading, with the standard deviation that it has if no reading is wrong
 */
public record CutBalance(int cut, Estimate excess) {
    /**
     * The difference in standard deviations.
     *
     * @return standard normal if no reading is wrong; more than 0 where more came out than went in
     */
    public double z() {
        return excess.mean() / Math.sqrt(excess.spread().variance());
    }
}
