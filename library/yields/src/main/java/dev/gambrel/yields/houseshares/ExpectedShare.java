package dev.gambrel.yields.houseshares;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.figure.Spread;

/**
 * What share of a cut to expect of a part.
 *
 * @param part its name
 * @param share the mean, a part of 1
 * @param betweenCarcasses how far carcasses stray from it, which averages out over many; parts of 1
 * @param ofMean how far it may be from the true mean, which does not; parts of 1
 */
public record ExpectedShare(TradeName part, double share, Spread betweenCarcasses, Spread ofMean) {
    /**
     * Checks the share.
     *
     * @throws IllegalArgumentException if it is below 0 or above 1
     */
    public ExpectedShare {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("a share is from 0 to 1, not " + share);
        }
    }
}
