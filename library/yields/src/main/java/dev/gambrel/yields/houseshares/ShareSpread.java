package dev.gambrel.yields.houseshares;

import dev.gambrel.yields.figure.Spread;

/**
 * How far the shares of several tests stray, and how much of that is the scale's doing. Variances add: what was observed is that
 * between carcasses and that of the weighing.
 *
 * @param observed the standard deviation of the shares, n − 1 below the sum of squares; parts of 1
 * @param weighing what errors of weighing alone would make of it, the root of their mean variance; not stated where nobody has said
 *     how far the scales may be off
 */
public record ShareSpread(double observed, Spread weighing) {
    /**
     * One standard deviation between carcasses: what was observed less what the weighing explains, 0 where it explains all of it.
     *
     * @return parts of 1; where the error of the weighing is not stated, it is still in it
     */
    public double betweenCarcasses() {
        return weighing instanceof Spread.Stated stated
                ? Math.sqrt(Math.max(0, observed * observed - stated.standardDeviation() * stated.standardDeviation()))
                : observed;
    }

    /**
     * Whether the scales alone explain all that was observed, so that how far carcasses stray cannot be told. Say so.
     *
     * @return true if the error of the weighing is as large as what was observed, and more than 0
     */
    public boolean isDrownedByWeighing() {
        return weighing instanceof Spread.Stated stated
                && stated.standardDeviation() > 0
                && stated.standardDeviation() >= observed;
    }
}
