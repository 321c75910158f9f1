package dev.gambrel.yields;

import dev.gambrel.quantity.Expected;
import java.util.Optional;

/**
 * A figure that is expected: a mean and how far it strays.
 *
 * @param mean the mean; kilograms where it is a weight
 * @param spread one standard deviation in the same unit, or not stated
 */
public record Estimate(double mean, Spread spread) {
    /** The largest standard deviation, as a part of the mean, at which a weight is taken as normal. */
    private static final double NORMAL_UP_TO = 0.2;

    static Estimate of(double mean, double variance) {
        return new Estimate(mean, Spread.ofVariance(variance));
    }

    /**
     * A figure known exactly.
     *
     * @param value the value
     * @return the value with no spread
     */
    public static Estimate exactly(double value) {
        return new Estimate(value, Spread.NONE);
    }

    /**
     * The same figure for a fixed multiple.
     *
     * @param factor any fixed number
     * @return mean and standard deviation multiplied by it
     */
    public Estimate times(double factor) {
        Spread scaled = spread instanceof Spread.Stated s
                ? new Spread.Stated(s.standardDeviation() * Math.abs(factor))
                : spread;
        return new Estimate(mean * factor, scaled);
    }

    /**
     * The product of two figures that vary independently, such as a carcass weight and a yield.
     *
     * <p>Exact, with no linearisation: Var[WX] = E[W]² Var[X] + Var[W] Var[X] + Var[W] E[X]² (L. A. Goodman, "On the exact
     * variance of products", Journal of the American Statistical Association 55, 1960).
     *
     * @param other a figure independent of this one
     * @return mean and standard deviation of the product; the spread is not stated unless both are
     */
    public Estimate timesIndependent(Estimate other) {
        double v = spread.variance();
        double w = other.spread.variance();
        return of(mean * other.mean, mean * mean * w + v * w + v * other.mean * other.mean);
    }

    /**
     * The range that holds the central 95 %.
     *
     * <p>Up to a standard deviation of a fifth of the mean it is mean ± 1.96 standard deviations of a normal distribution.
     * Beyond, where that would reach down towards negative weights, it is the range of the lognormal distribution with the
     * same mean and standard deviation. A figure whose mean is not positive is taken as normal; a weight of mean 0 is not
     * let below 0.
     *
     * @return the range, or nothing where the spread is not stated
     */
    public Optional<Interval> range95() {
        return spread instanceof Spread.Stated s ? Optional.of(range(s.standardDeviation())) : Optional.empty();
    }

    private Interval range(double sd) {
        if (mean > 0 && sd > NORMAL_UP_TO * mean) {
            double cv = sd / mean;
            double logVariance = Math.log1p(cv * cv);
            double middle = mean * Math.exp(-logVariance / 2);
            double factor = Math.exp(Expected.NORMAL_95 * Math.sqrt(logVariance));
            return new Interval(middle / factor, middle * factor);
        }
        double low = mean - Expected.NORMAL_95 * sd;
        return new Interval(mean == 0 ? 0 : low, mean + Expected.NORMAL_95 * sd);
    }
}
