package dev.gambrel.yields.lean;

import dev.gambrel.quantity.Expected;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Spread;
import java.util.Optional;

/**
 * One uncertain figure U over another, W, that varies with it: lean weight over weight.
 *
 * <p>Everything is told by the gap D = U - rW with r = E[U] / E[W], whose mean is 0; so no digits cancel.
 *
 * @param ofMeans r, the one mean over the other
 * @param gapVariance Var[D] / E[W]²; NaN where the spreads stated do not settle it
 * @param gapCovariance Cov[D, W] / E[W]²; NaN likewise
 * @param weightVariance Var[W] / E[W]²; NaN likewise
 */
public record Ratio(double ofMeans, double gapVariance, double gapCovariance, double weightVariance) {
    /** Above this coefficient of variation of W the ratio is no longer told as a normal figure. */
    private static final double STEADY = 0.1;

    /**
     * Mean and standard deviation, to the second and the first order: E = r - Cov[D, W] / E[W]², Var = Var[D] / E[W]². Written
     * out in coefficients of variation this is r (1 + cv_W² - ρ cv_U cv_W) and r² (cv_U² + cv_W² - 2 ρ cv_U cv_W), the delta
     * method (W. G. Cochran, "Sampling Techniques", 3rd edition 1977, 2.11 and 6.4, from memory).
     *
     * @return the mean where the spreads settle it, the ratio of the means where they do not
     */
    public Estimate estimate() {
        return Double.isNaN(gapVariance) || Double.isNaN(gapCovariance)
                ? new Estimate(ofMeans, Spread.NOT_STATED)
                : new Estimate(ofMeans - gapCovariance, Spread.ofVariance(gapVariance));
    }

    /**
     * The range that holds the central 95 %.
     *
     * <p>Mean ± 1.96 standard deviations while W strays by no more than a tenth of its mean. Beyond, the ratios t for which U -
     * tW is no further than 1.96 of its standard deviations from 0 (E. C. Fieller, "Some problems in interval estimation",
     * Journal of the Royal Statistical Society B 16, 1954, from memory).
     *
     * @return the range; nothing where the spreads do not settle it, or where W may well be nothing
     */
    public Optional<Interval> range95() {
        if (gapVariance == 0) {
            return Optional.of(new Interval(ofMeans, ofMeans));
        }
        if (estimate().spread() instanceof Spread.NotStated || Double.isNaN(weightVariance)) {
            return Optional.empty();
        }
        return weightVariance <= STEADY * STEADY ? estimate().range95() : wide();
    }

    /** The roots of (t - r)² (1 - z² V) + 2 (t - r) z² C - z² G = 0. */
    private Optional<Interval> wide() {
        double z2 = Expected.NORMAL_95 * Expected.NORMAL_95;
        double a = 1 - z2 * weightVariance;
        if (a <= 0) {
            return Optional.empty();
        }
        double b = z2 * gapCovariance;
        double root = Math.sqrt(b * b + a * z2 * gapVariance);
        return Optional.of(new Interval(ofMeans + (-b - root) / a, ofMeans + (-b + root) / a));
    }
}
