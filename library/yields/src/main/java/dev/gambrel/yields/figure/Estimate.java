package dev.gambrel.yields.figure;

import dev.gambrel.quantity.Expected;
import java.util.Optional;

/**
 * A figure that is expected: a mean and how far it strays.
 *
 * @param mean the mean; kilograms where it is a weight
 * @param spread one standard deviation in the same unit, or not stated
 */
public record Estimate(double mean, Spread spread) {
    /**
     * A figure of known variance.
     *
     * @param mean the mean
     * @param variance the square of the standard deviation; not a number where it is not stated
     * @return the figure
     */
    public static Estimate of(double mean, double variance) {
        return new Estimate(mean, Spread.ofVariance(variance));
    }

    /**
     * A figure as it is written.
     *
     * @param written a weight, a length or a share
     * @return mean and standard deviation in the unit of comparison; the spread is not stated where none is written
     */
    public static Estimate of(Expected written) {
        return new Estimate(
                written.mean(),
                written.standardDeviation().isPresent()
                        ? new Spread.Stated(written.standardDeviation().getAsDouble())
                        : Spread.NOT_STATED);
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
     * @return mean and standard deviation of the product; the spread is not stated unless both are, or one is exactly
     *     0
     */
    public Estimate timesIndependent(Estimate other) {
        return JointEstimate.of(this).timesIndependent(other).figure(0);
    }

    /**
     * The range that holds the central 95 % of a normal distribution: mean ± 1.96 standard deviations. For any figure, such
     * as a value that may be a loss.
     *
     * @return the range, or nothing where the spread is not stated
     */
    public Optional<Interval> range95() {
        return spread instanceof Spread.Stated s
                ? Optional.of(new Interval(
                        mean - Expected.NORMAL_95 * s.standardDeviation(),
                        mean + Expected.NORMAL_95 * s.standardDeviation()))
                : Optional.empty();
    }

    /**
     * The range that holds the central 95 % of a weight, which is never less than nothing.
     *
     * <p>It is {@link #range95} unless that would begin below 0; then it is the range of the lognormal distribution with the
     * same mean and standard deviation. So an expectation written as a range is given back as written.
     *
     * @return the range, or nothing where the spread is not stated
     */
    public Optional<Interval> weightRange95() {
        return range95().map(normal -> {
            if (normal.low() >= 0) {
                return normal;
            }
            return mean > 0 ? lognormal((normal.high() - mean) / Expected.NORMAL_95) : new Interval(0, normal.high());
        });
    }

    private Interval lognormal(double sd) {
        double cv = sd / mean;
        double logVariance = Math.log1p(cv * cv);
        double middle = mean * Math.exp(-logVariance / 2);
        double factor = Math.exp(Expected.NORMAL_95 * Math.sqrt(logVariance));
        return new Interval(middle / factor, middle * factor);
    }
}
