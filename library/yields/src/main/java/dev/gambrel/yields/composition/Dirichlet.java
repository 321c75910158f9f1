package dev.gambrel.yields.composition;

import dev.gambrel.yields.figure.JointEstimate;
import java.util.Arrays;
import java.util.Optional;

/**
 * The distribution of shares that is known by one number for each part. One number tells all spreads: with means m and the sum A
 * of the numbers every variance is m (1 − m) / (A + 1). So it cannot carry spreads that are stated part by part; {@link
 * dev.gambrel.yields.closure.Closure} does.
 */
public final class Dirichlet {
    private final double[] alpha;

    private Dirichlet(double[] alpha) {
        this.alpha = alpha;
    }

    /**
     * A distribution of shares.
     *
     * @param alpha how much each part weighs, 2 or more parts
     * @return the distribution
     * @throws IllegalArgumentException if there are fewer, or one is not a number more than 0
     */
    public static Dirichlet of(double... alpha) {
        if (alpha.length < 2 || !Arrays.stream(alpha).allMatch(each -> each > 0 && each < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("each of 2 parts or more weighs more than 0: " + Arrays.toString(alpha));
        }
        return new Dirichlet(alpha.clone());
    }

    /**
     * The distribution that makes compositions likeliest. Its means are not the means of the shares: say which is shown.
     *
     * @param sample compositions of the same parts
     * @return the distribution; nothing where they do not vary, or hardly, so that no finite numbers fit
     */
    public static Optional<Dirichlet> likeliest(CompositionSample sample) {
        return new DirichletFit(sample).alpha().map(Dirichlet::new);
    }

    /**
     * How much a part weighs.
     *
     * @param part its index, from 0
     * @return more than 0
     */
    public double alpha(int part) {
        return alpha[part];
    }

    /**
     * What all parts weigh together: the more, the less the shares vary.
     *
     * @return A, more than 0
     */
    public double concentration() {
        return Arrays.stream(alpha).sum();
    }

    /**
     * Means and covariances of the shares: m and (diag(m) − m m') / (A + 1) (S. Kotz, N. Balakrishnan and N. L. Johnson,
     * Continuous Multivariate Distributions, volume 1, chapter 49).
     *
     * @return shares as parts of 1
     */
    public JointEstimate moments() {
        double sum = concentration();
        double[] mean = Arrays.stream(alpha).map(each -> each / sum).toArray();
        double[][] covariance = new double[alpha.length][alpha.length];
        for (int i = 0; i < alpha.length; i++) {
            for (int j = 0; j < alpha.length; j++) {
                covariance[i][j] = mean[i] * ((i == j ? 1 : 0) - mean[j]) / (sum + 1);
            }
        }
        return JointEstimate.of(mean, covariance);
    }
}
