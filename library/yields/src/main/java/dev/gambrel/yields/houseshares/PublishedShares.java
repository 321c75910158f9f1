package dev.gambrel.yields.houseshares;

import dev.gambrel.yields.closure.Closure;
import dev.gambrel.yields.composition.Composition;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.figure.Spread;
import java.util.List;

/**
 * Shares of a cut as they are published, taken for what a house is like before it has tests of its own.
 *
 * @param shares for each part the mean share, a part of 1, and how far carcasses stray from it; spreads that are not all stated count
 *     as none stated
 */
public record PublishedShares(List<Estimate> shares) {
    /** How far the shares may miss the whole. */
    public static final double MOST_GAP = 0.000_5;

    /**
     * Copies the list and checks it.
     *
     * @throws IllegalArgumentException if there are fewer than 2 parts, one is not above 0, they miss the whole by more than {@link
     *     #MOST_GAP}, or a spread exceeds the sum of the others
     */
    public PublishedShares {
        shares = List.copyOf(shares);
        double sum = shares.stream().mapToDouble(Estimate::mean).sum();
        if (!(Math.abs(sum - 1) <= MOST_GAP * (1 + 1e-9))) {
            throw new IllegalArgumentException("published shares add up to " + sum + ", not 1");
        }
        Composition.of(shares.stream().mapToDouble(Estimate::mean).toArray());
        if (stated(shares)) {
            Closure.amongAll(deviations(shares));
        }
    }

    private static boolean stated(List<Estimate> shares) {
        return shares.stream().allMatch(share -> share.spread() instanceof Spread.Stated);
    }

    private static double[] deviations(List<Estimate> shares) {
        return shares.stream()
                .mapToDouble(share -> Math.sqrt(share.spread().variance()))
                .toArray();
    }

    /**
     * Whether a spread is stated of every part.
     *
     * @return true if the table tells how far carcasses stray
     */
    public boolean tellsSpreads() {
        return stated(shares);
    }

    /**
     * The mean shares, closed.
     *
     * @return as many as parts
     */
    public Composition means() {
        return Composition.of(shares.stream().mapToDouble(Estimate::mean).toArray());
    }

    /**
     * Centred log-ratios of the shares and how they vary, to the first order: GCG' with C the closure of the stated spreads and G = (I
     * − 11' / D) diag(1 / m).
     */
    JointEstimate logRatios() {
        int parts = shares.size();
        Closure closure = Closure.amongAll(deviations(shares));
        Composition means = means();
        double[][] gradients = new double[parts][parts];
        for (int i = 0; i < parts; i++) {
            for (int j = 0; j < parts; j++) {
                gradients[i][j] = ((i == j ? 1 : 0) - 1.0 / parts) / means.share(j);
            }
        }
        double[][] covariance = new double[parts][parts];
        for (int i = 0; i < parts; i++) {
            for (int j = 0; j <= i; j++) {
                covariance[i][j] =
                        i == j ? closure.variance(gradients[i], 0) : closure.covariance(gradients[i], gradients[j], 0);
                covariance[j][i] = covariance[i][j];
            }
        }
        return JointEstimate.of(means.clr(), covariance);
    }
}
