package dev.gambrel.yields.figure;

import dev.gambrel.quantity.Expected;
import java.util.Optional;

/**
 * One figure U over another, W, that varies with it, such as a cost over a weight.
 *
 * <p>Everything is told by the gap D = U − rW with r = E[U] / E[W], whose mean is 0; so whoever can work out the gap as a
 * figure of its own loses no digits.
 *
 * @param ofMeans r, the one mean over the other
 * @param gapVariance Var[D] / E[W]²; NaN where the spreads stated do not settle it
 * @param gapCovariance Cov[D, W] / E[W]²; NaN likewise
 * @param underVariance Var[W] / E[W]²; NaN likewise
 */
public record Ratio(double ofMeans, double gapVariance, double gapCovariance, double underVariance) {
    /**
     * The ratio of two figures.
     *
     * @param over what is divided
     * @param under what it is divided by
     * @param covariance how the two vary together; NaN where it is not stated
     * @return the ratio
     * @throws IllegalArgumentException if the mean of {@code under} is 0
     */
    public static Ratio of(Estimate over, Estimate under, double covariance) {
        if (under.mean() == 0) {
            throw new IllegalArgumentException("nothing can be divided by 0");
        }
        double r = over.mean() / under.mean();
        double square = under.mean() * under.mean();
        double variance = under.spread().variance();
        double gap = over.spread().variance() - 2 * r * covariance + r * r * variance;
        return new Ratio(r, Math.max(0, gap) / square, (covariance - r * variance) / square, variance / square);
    }

    /**
     * Mean and standard deviation, to the second and the first order: E = r − Cov[D, W] / E[W]², Var = Var[D] / E[W]². Written
     * out in coefficients of variation this is r (1 + cv_W² − ρ cv_U cv_W) and r² (cv_U² + cv_W² − 2 ρ cv_U cv_W), the delta
     * method (M. Kendall and A. Stuart, The Advanced Theory of Statistics, volume 1, chapter 10, from memory). Good while the
     * coefficient of variation of W is small, at most 0.1; {@link #range95} holds beyond.
     *
     * @return the mean where the spreads settle it, the ratio of the means where they do not
     */
    public Estimate estimate() {
        return Double.isNaN(gapVariance) || Double.isNaN(gapCovariance)
                ? new Estimate(ofMeans, Spread.NOT_STATED)
                : Estimate.of(ofMeans - gapCovariance, gapVariance);
    }

    /**
     * The range that holds the central 95 % of the ratio of two normal figures. Not even about the mean, and right however much
     * W varies, as long as it is hardly ever below 0.
     *
     * <p>Its ends are the t for which U − tW is 1.96 of its own standard deviations from 0, the roots of (t − r)² (1 − z² V) +
     * 2 (t − r) z² C − z² G = 0 (E. C. Fieller, "Some problems in interval estimation", Journal of the Royal Statistical Society
     * B 16, 1954; for the ratio itself D. V. Hinkley, "On the ratio of two correlated normal random variables", Biometrika 56,
     * 1969).
     *
     * @return the range; nothing where a spread is not stated, or where W strays so far that it may be 0, so that the ratio has
     *     no end
     */
    public Optional<Interval> range95() {
        if (gapVariance == 0) {
            return Optional.of(new Interval(ofMeans, ofMeans));
        }
        double z2 = Expected.NORMAL_95 * Expected.NORMAL_95;
        double a = 1 - z2 * underVariance;
        double b = z2 * gapCovariance;
        double root = Math.sqrt(b * b + a * z2 * gapVariance);
        return a > 0 && !Double.isNaN(root)
                ? Optional.of(new Interval(ofMeans + (-b - root) / a, ofMeans + (-b + root) / a))
                : Optional.empty();
    }
}
