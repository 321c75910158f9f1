package dev.gambrel.yields.testedcuts;

import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.reconciliation.Reconciled;
import dev.gambrel.yields.reconciliation.Reconciliation;
import java.util.List;

/**
 * The reconciled weights of the parts of one cut together. The covariance of two is half of what the variance of their sum exceeds both of
 * theirs by, which holds however they came to vary together: by the balance of the cut, or one as what the others leave of it.
 */
final class Siblings {
    private Siblings() {}

    static JointEstimate of(Reconciliation sheet, List<Integer> parts) {
        int n = parts.size();
        double[] means = new double[n];
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            Reconciled.Weight weight = (Reconciled.Weight) sheet.weight(parts.get(i));
            means[i] = weight.estimate().mean();
            covariance[i][i] = weight.estimate().spread().variance();
            for (int j = 0; j < i; j++) {
                double both = varianceOfSum(sheet, parts.get(i), parts.get(j));
                covariance[i][j] = (both - covariance[i][i] - covariance[j][j]) / 2;
                covariance[j][i] = covariance[i][j];
            }
        }
        return JointEstimate.of(means, covariance);
    }

    private static double varianceOfSum(Reconciliation sheet, int one, int other) {
        return sheet.figure(v -> v == one || v == other ? 1 : 0).spread().variance();
    }
}
