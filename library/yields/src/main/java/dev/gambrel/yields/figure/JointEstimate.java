package dev.gambrel.yields.figure;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Several figures that are expected of the same thing: their means, and how they vary together. The figures are told apart by
 * their index, from 0.
 *
 * <p>What is not stated stays so, entry by entry: two figures may each have a spread while nothing is known of how they vary
 * together. Immutable; safe between threads.
 */
public final class JointEstimate {
    private final double[] mean;
    private final double[][] covariance;

    private JointEstimate(double[] mean, double[][] covariance) {
        this.mean = mean;
        this.covariance = covariance;
    }

    /**
     * Figures of known means and covariances.
     *
     * @param means the means
     * @param covariances for each figure its covariances with all, its variance among them; NaN where not stated
     * @return the figures
     * @throws IllegalArgumentException if the covariances are not as many as the means, both ways, or not the same both ways,
     *     or a variance is less than 0
     */
    public static JointEstimate of(double[] means, double[][] covariances) {
        double[][] copy = Arrays.stream(covariances).map(double[]::clone).toArray(double[][]::new);
        boolean square = copy.length == means.length && Arrays.stream(copy).allMatch(row -> row.length == means.length);
        if (!square) {
            throw new IllegalArgumentException(means.length + " figures have as many covariances each");
        }
        for (int i = 0; i < copy.length; i++) {
            if (copy[i][i] < 0) {
                throw new IllegalArgumentException("figure " + i + " has the variance " + copy[i][i]);
            }
            for (int j = 0; j < i; j++) {
                boolean isOpen = Double.isNaN(copy[i][j]) && Double.isNaN(copy[j][i]);
                if (copy[i][j] != copy[j][i] && !isOpen) {
                    throw new IllegalArgumentException(
                            "figures " + i + " and " + j + " vary together by " + copy[i][j] + " and by " + copy[j][i]);
                }
            }
        }
        return new JointEstimate(means.clone(), copy);
    }

    /**
     * A figure by itself.
     *
     * @param figure mean and spread
     * @return the one figure
     */
    public static JointEstimate of(Estimate figure) {
        return new JointEstimate(
                new double[] {figure.mean()}, new double[][] {{figure.spread().variance()}});
    }

    /**
     * How many figures there are.
     *
     * @return their number
     */
    public int size() {
        return mean.length;
    }

    /**
     * The mean of a figure.
     *
     * @param figure its index
     * @return in the unit of the figure
     */
    public double mean(int figure) {
        return mean[figure];
    }

    /**
     * One figure by itself.
     *
     * @param figure its index
     * @return mean and spread
     */
    public Estimate figure(int figure) {
        return Estimate.of(mean[figure], covariance[figure][figure]);
    }

    /**
     * How two figures vary together.
     *
     * @param one the index of the one
     * @param other the index of the other; of the same, its variance is given
     * @return in the unit of the one times that of the other, less than 0 where one is low when the other is high; nothing
     *     where it is not stated
     */
    public OptionalDouble covariance(int one, int other) {
        return known(covariance[one][other]);
    }

    /**
     * How closely two figures vary together: their covariance over both standard deviations.
     *
     * @param one the index of the one
     * @param other the index of the other
     * @return from -1 to 1; nothing where it is not stated, or where one of them does not vary
     */
    public OptionalDouble correlation(int one, int other) {
        double squares = covariance[one][one] * covariance[other][other];
        return squares == 0
                ? OptionalDouble.empty()
                : known(Math.max(-1, Math.min(1, covariance[one][other] / Math.sqrt(squares))));
    }

    private static OptionalDouble known(double figure) {
        return Double.isNaN(figure) ? OptionalDouble.empty() : OptionalDouble.of(figure);
    }

    /**
     * A sum in which each figure counts with a weight of its own, such as a value less a cost. Exact.
     *
     * @param weights one for each figure; a figure of weight 0 is not asked for its spread
     * @return mean and spread of the sum
     * @throws IllegalArgumentException if the weights are not as many as the figures
     */
    public Estimate combination(double... weights) {
        asMany(weights.length);
        double sum = 0;
        for (int i = 0; i < mean.length; i++) {
            sum += weights[i] * mean[i];
        }
        return propagated(sum, weights);
    }

    /**
     * What follows from the figures by a function that is smooth near their means: to the first order its variance is g'Cg with
     * g its gradient and C the covariance (law of propagation of uncertainty for correlated quantities: JCGM 100:2008, 5.2.2,
     * equation 13). Exact where the function is linear.
     *
     * @param value the function at the means
     * @param gradient its derivative by each figure at the means; a figure of derivative 0 is not asked for its spread
     * @return value and spread
     * @throws IllegalArgumentException if the derivatives are not as many as the figures
     */
    public Estimate propagated(double value, double... gradient) {
        return propagated(new double[] {value}, new double[][] {gradient}).figure(0);
    }

    /**
     * What follows from the figures by several functions that are smooth near their means, and how that varies together: JCJ'
     * to the first order, J holding the gradients (JCGM 102:2011, 6.2).
     *
     * @param values the functions at the means
     * @param gradients for each function its derivative by each figure at the means
     * @return as many figures as functions
     * @throws IllegalArgumentException if the functions do not all have a gradient, or one does not have as many derivatives as
     *     there are figures
     */
    public JointEstimate propagated(double[] values, double[][] gradients) {
        if (gradients.length != values.length) {
            throw new IllegalArgumentException(values.length + " functions have as many gradients");
        }
        for (double[] gradient : gradients) {
            asMany(gradient.length);
        }
        double[][] result = new double[values.length][values.length];
        for (int a = 0; a < values.length; a++) {
            for (int b = 0; b <= a; b++) {
                double sum = form(gradients[a], gradients[b]);
                result[a][b] = a == b ? Math.max(0, sum) : sum;
                result[b][a] = result[a][b];
            }
        }
        return new JointEstimate(values.clone(), result);
    }

    private void asMany(int others) {
        if (others != mean.length) {
            throw new IllegalArgumentException(others + " for " + mean.length + " figures");
        }
    }

    private double form(double[] g, double[] h) {
        double sum = 0;
        for (int i = 0; i < mean.length; i++) {
            for (int j = 0; j < mean.length; j++) {
                sum += product(g[i] * h[j], covariance[i][j]);
            }
        }
        return sum;
    }

    /** Nothing times what is not stated is nothing. */
    private static double product(double a, double b) {
        return a == 0 || b == 0 ? 0 : a * b;
    }

    /**
     * The same figures for a fixed multiple.
     *
     * @param factor any fixed number
     * @return means multiplied by it, covariances by its square
     */
    public JointEstimate times(double factor) {
        return timesIndependent(Estimate.exactly(factor));
    }

    /**
     * All figures times one that varies independently of them, such as a carcass weight times what a kilogram gives. They then
     * vary together with it.
     *
     * <p>Exact: Cov[WX, WY] = (E[W]² + Var[W]) Cov[X, Y] + Var[W] E[X] E[Y] (L. A. Goodman, "On the exact variance of products",
     * Journal of the American Statistical Association 55, 1960, and the law of total covariance).
     *
     * @param factor a figure independent of these
     * @return means and covariances of the products
     */
    public JointEstimate timesIndependent(Estimate factor) {
        double variance = factor.spread().variance();
        double square = factor.mean() * factor.mean() + variance;
        double[] means = Arrays.stream(mean).map(m -> m * factor.mean()).toArray();
        double[][] result = new double[mean.length][mean.length];
        for (int i = 0; i < mean.length; i++) {
            for (int j = 0; j < mean.length; j++) {
                result[i][j] = product(square, covariance[i][j]) + product(variance, mean[i] * mean[j]);
            }
        }
        return new JointEstimate(means, result);
    }

    /**
     * The same figures when they vary in one way more, which knows nothing of the first: covariances add up.
     *
     * @param other as many figures, whose means are not read
     * @return the figures varying in both ways
     * @throws IllegalArgumentException if the others are not as many
     */
    public JointEstimate alsoVarying(JointEstimate other) {
        asMany(other.mean.length);
        double[][] both = new double[mean.length][mean.length];
        for (int i = 0; i < mean.length; i++) {
            for (int j = 0; j < mean.length; j++) {
                both[i][j] = covariance[i][j] + other.covariance[i][j];
            }
        }
        return new JointEstimate(mean, both);
    }

    /**
     * One figure over another, such as a cost over a weight.
     *
     * @param over the index of the one that is divided
     * @param under the index of the one that it is divided by, of a mean that is not 0
     * @return the ratio
     * @throws IllegalArgumentException if the mean is 0
     */
    public Ratio ratio(int over, int under) {
        return Ratio.of(figure(over), figure(under), covariance[over][under]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JointEstimate joint
                && Arrays.equals(mean, joint.mean)
                && Arrays.deepEquals(covariance, joint.covariance);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(mean) + Arrays.deepHashCode(covariance);
    }

    @Override
    public String toString() {
        return "means " + Arrays.toString(mean) + ", covariances " + Arrays.deepToString(covariance);
    }
}
