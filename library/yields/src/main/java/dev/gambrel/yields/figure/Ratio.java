package dev.gambrel.yields.figure;

import dev.gambrel.quantity.Expected;
import java.util.Optional;

/**
 * One figure over another that varies with it, such as a cost over a weight.
 *
 * @param over what is divided
 * @param under what it is divided by; its mean is not 0
 * @param covariance how the two vary together; NaN where it is not stated
 */
public record Ratio(Estimate over, Estimate under, double covariance) {
    /**
     * Checks that there is something to divide by.
     *
     * @throws IllegalArgumentException if its mean is 0
     */
    public Ratio {
        if (under.mean() == 0) {
            throw new IllegalArgumentException("nothing can be divided by 0");
        }
    }

    /**
     * Mean and spread.
     *
     * <p>With U over W, R = E[U] / E[W] and relative variances and covariance: the mean is R (1 + cv² of W − relative
     * covariance), to the second order, and the variance (Var[U] − 2 R Cov[U, W] + R² Var[W]) / E[W]², to the first (delta
     * method: M. Kendall and A. Stuart, The Advanced Theory of Statistics, volume 1, chapter 10). Good while the coefficient of
     * variation of W is small, at most 0.1; {@link #range95} holds beyond.
     *
     * @return the mean is that of the first order where a spread is not stated
     */
    public Estimate estimate() {
        double w = under.mean();
        double ratio = over.mean() / w;
        double curved = ratio * under.spread().variance() / (w * w) - covariance / (w * w);
        double variance = Math.max(0, apart(ratio)) / (w * w);
        return Estimate.of(Double.isNaN(curved) ? ratio : ratio + curved, variance);
    }

    /** The variance of U - R W. */
    private double apart(double ratio) {
        return over.spread().variance()
                - 2 * ratio * covariance
                + ratio * ratio * under.spread().variance();
    }

    /**
     * The range that holds the central 95 % of the ratio of two normal figures. Not even about the mean, and right however much
     * W varies, as long as it is hardly ever below 0.
     *
     * <p>Its ends are where U − R W is 1.96 of its own standard deviations from 0 (E. C. Fieller, "Some problems in interval
     * estimation", Journal of the Royal Statistical Society B 16, 1954; for the ratio itself D. V. Hinkley, "On the ratio of two
     * correlated normal random variables", Biometrika 56, 1969).
     *
     * @return the range; nothing where a spread is not stated, or where W strays so far that it may be 0, so that the ratio has
     *     no end
     */
    public Optional<Interval> range95() {
        double w = under.mean();
        double z2 = Expected.NORMAL_95 * Expected.NORMAL_95;
        double both = over.spread().variance() * under.spread().variance() - covariance * covariance;
        double square = z2 * (w * w * apart(over.mean() / w) - z2 * both);
        double a = w * w - z2 * under.spread().variance();
        if (Double.isNaN(square) || !(a > 0)) {
            return Optional.empty();
        }
        double middle = (over.mean() * w - z2 * covariance) / a;
        double half = Math.sqrt(Math.max(0, square)) / a;
        return Optional.of(new Interval(middle - half, middle + half));
    }
}
