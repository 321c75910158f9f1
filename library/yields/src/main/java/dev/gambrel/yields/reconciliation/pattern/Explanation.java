package dev.gambrel.yields.reconciliation.pattern;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.reconciliation.GlobalTest;

/**
 * A pattern that a sheet speaks for.
 *
 * @param pattern the mistake
 * @param size how large it is by the sheet: of a known size 1 means that it fits exactly; else in the unit that the pattern names
 * @param after how well the sheet fits if the mistake was made: where its size is known with that size, else with the size found
 */
public record Explanation(Pattern pattern, Estimate size, GlobalTest after) {
    /**
     * How much speaks for it.
     *
     * @return its size in standard deviations, standard normal if the mistake was not made
     */
    public double z() {
        return size.mean() / deviation();
    }

    /**
     * How far the size found is from the one that the pattern asks for.
     *
     * @return standard deviations, standard normal if the mistake was made; 0 for a pattern without a size of its own
     */
    public double misfit() {
        return pattern.isOfKnownSize() ? (size.mean() - 1) / deviation() : 0;
    }

    /**
     * By how much the chi-square falls.
     *
     * @return the square of {@link #z} less that of {@link #misfit}
     */
    public double explained() {
        return z() * z() - misfit() * misfit();
    }

    /**
     * What it is ranked by: how much it explains, less 2 where its size is taken from the sheet (H. Akaike, "A new look at the statistical
     * model identification", IEEE Transactions on Automatic Control 19, 1974).
     *
     * @return more for a better explanation
     */
    public double merit() {
        return explained() - (pattern.isOfKnownSize() ? 0 : 2);
    }

    private double deviation() {
        return Math.sqrt(size.spread().variance());
    }
}
