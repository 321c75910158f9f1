package dev.gambrel.yields.testedcuts;

import dev.gambrel.yields.figure.Interval;

/**
 * The share of a part as the tests found it.
 *
 * @param part the part, and what is stated of it
 * @param share of the cut, a part of 1
 * @param straying how far it strays
 */
public record FoundShare(TestedPart part, double share, Straying straying) {
    /** How far a share strays from carcass to carcass, and how far its mean may be off. */
    public sealed interface Straying {}

    /** One test tells neither. That is not none. */
    public record NotTold() implements Straying {}

    /**
     * Both are told; parts of 1.
     *
     * @param betweenCarcasses one standard deviation between carcasses, which averages out over many
     * @param ofMean the standard error of the mean, which does not
     * @param mean95 the range that holds the house's true mean in 95 of 100 cases
     * @param next95 the range that holds the next carcass, weighed as these were, in 95 of 100 cases
     * @param isDrowned true if the scale's error alone explains all that shares stray, so that the carcasses' own is not told
     */
    public record Told(double betweenCarcasses, double ofMean, Interval mean95, Interval next95, boolean isDrowned)
            implements Straying {}

    /** Whether what is stated lies outside the range of the mean. */
    boolean isStatedOutside() {
        double stated = part.stated().mean();
        return part.isStated()
                && straying instanceof Told told
                && (stated < told.mean95().low() || stated > told.mean95().high());
    }
}
