package dev.gambrel.yields.composition;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.numbers.gamma.Digamma;
import org.apache.commons.numbers.gamma.Trigamma;

/**
 * The likeliest Dirichlet distribution by Newton's method: the Hessian is a diagonal and one constant, so a step costs O(parts) (T.
 * P. Minka, "Estimating a Dirichlet distribution", 2000, revised 2012; A. Narayanan, "Algorithm AS 266", Applied Statistics 40,
 * 1991). It starts at the moments; a step that would leave the positive numbers is halved.
 */
final class DirichletFit {
    private static final int MOST_STEPS = 100;
    private static final double SETTLED = 1e-13;

    /** Shares that stray by less than a ten-thousandth are taken for shares that do not vary. */
    private static final double MOST_CONCENTRATION = 1e8;

    private final CompositionSample sample;
    private final double[] meanLogarithm;

    DirichletFit(CompositionSample sample) {
        this.sample = sample;
        this.meanLogarithm = new double[sample.parts()];
        Arrays.setAll(
                meanLogarithm,
                i -> sample.compositions().stream()
                        .mapToDouble(each -> Math.log(each.share(i)))
                        .average()
                        .orElseThrow());
    }

    Optional<double[]> alpha() {
        double concentration = concentrationByMoments();
        if (!(concentration < MOST_CONCENTRATION)) {
            return Optional.empty();
        }
        double[] alpha = new double[sample.parts()];
        Arrays.setAll(alpha, i -> meanShare(i) * concentration);
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] change = change(alpha);
            double factor = staysPositive(alpha, change);
            double largest = 0;
            for (int i = 0; i < alpha.length; i++) {
                alpha[i] -= factor * change[i];
                largest = Math.max(largest, Math.abs(change[i] / alpha[i]));
            }
            if (largest < SETTLED) {
                break;
            }
        }
        return Optional.of(alpha).filter(found -> Arrays.stream(found).sum() < MOST_CONCENTRATION);
    }

    private double meanShare(int part) {
        return sample.compositions().stream()
                .mapToDouble(each -> each.share(part))
                .average()
                .orElseThrow();
    }

    /** The mean over parts of m (1 - m) / v - 1, one for each part if this were a Dirichlet distribution. */
    private double concentrationByMoments() {
        double sum = 0;
        for (int i = 0; i < sample.parts(); i++) {
            int part = i;
            double mean = meanShare(part);
            double variance = sample.compositions().stream()
                    .mapToDouble(each -> Math.pow(each.share(part) - mean, 2))
                    .average()
                    .orElseThrow();
            sum += Math.max(1, mean * (1 - mean) / variance - 1);
        }
        return sum / sample.parts();
    }

    private double[] change(double[] alpha) {
        double whole = Arrays.stream(alpha).sum();
        double[] gradient = new double[alpha.length];
        double[] curvature = new double[alpha.length];
        double over = 0;
        double under = 1 / Trigamma.value(whole);
        for (int i = 0; i < alpha.length; i++) {
            gradient[i] = Digamma.value(whole) - Digamma.value(alpha[i]) + meanLogarithm[i];
            curvature[i] = -Trigamma.value(alpha[i]);
            over += gradient[i] / curvature[i];
            under += 1 / curvature[i];
        }
        double common = over / under;
        double[] change = new double[alpha.length];
        Arrays.setAll(change, i -> (gradient[i] - common) / curvature[i]);
        return change;
    }

    private static double staysPositive(double[] alpha, double[] change) {
        double factor = 1;
        for (int i = 0; i < alpha.length; i++) {
            while (alpha[i] - factor * change[i] <= 0) {
                factor /= 2;
            }
        }
        return factor;
    }
}
