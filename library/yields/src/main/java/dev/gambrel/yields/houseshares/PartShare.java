package dev.gambrel.yields.houseshares;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.figure.Interval;
import java.util.Optional;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The share of one part in the tests of a house.
 *
 * <p>Ranges are those of Student's t with n − 1 degrees of freedom (Student, "The probable error of a mean", Biometrika 6, 1908), n
 * the effective number of tests: exact for a mean of shares that are normal, as good as the standard error for a ratio of sums. They
 * take in the error of the weighing, and end at 0 and 1.
 *
 * @param part its name
 * @param tests how many tests there are
 * @param meanOfShares the mean of the shares of the tests, a part of 1
 * @param ratioOfSums its weight in all tests over that of the cut, a part of 1
 * @param straying how far its share strays from test to test
 */
public record PartShare(TradeName part, int tests, double meanOfShares, double ratioOfSums, Straying straying) {
    private static final double UPPER = 0.975;

    /**
     * The mean share.
     *
     * @param by what it is the mean of
     * @return a part of 1
     */
    public double share(Averaging by) {
        return by == Averaging.RATIO_OF_SUMS ? ratioOfSums : meanOfShares;
    }

    /**
     * The range that holds the house's true mean in 95 of 100 cases.
     *
     * @param by what it is the mean of
     * @return parts of 1; nothing where there is one test
     */
    public Optional<Interval> mean95(Averaging by) {
        return straying instanceof Straying.Known known
                ? Optional.of(range(by, known, error(by, known)))
                : Optional.empty();
    }

    /**
     * The range that holds the share of the next carcass, weighed as these were, in 95 of 100 cases.
     *
     * @param by which mean it is laid about
     * @return parts of 1; nothing where there is one test
     */
    public Optional<Interval> next95(Averaging by) {
        return straying instanceof Straying.Known known
                ? Optional.of(range(by, known, Math.hypot(known.spread().observed(), error(by, known))))
                : Optional.empty();
    }

    static double error(Averaging by, Straying.Known known) {
        return by == Averaging.RATIO_OF_SUMS ? known.errorOfRatio() : known.errorOfMean();
    }

    private Interval range(Averaging by, Straying.Known known, double sd) {
        double half = sd == 0 ? 0 : TDistribution.of(known.number() - 1).inverseCumulativeProbability(UPPER) * sd;
        return new Interval(Math.max(0, share(by) - half), Math.min(1, share(by) + half));
    }
}
