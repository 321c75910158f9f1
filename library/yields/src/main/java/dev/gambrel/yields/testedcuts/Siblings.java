package dev.gambrel.yields.testedcuts;

import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.reconciliation.Reconciled;
import dev.gambrel.yields.reconciliation.Reconciliation;
import java.util.Arrays;
import java.util.List;

/**
 * The reconciled weights of the parts of one cut together. Parts that were weighed apart err apart, until their sum is held against the
 * cut: with variances v before and p of the cut, V = Σv + p, the balance leaves each r = v − v² / V, its covariance with the cut c = vp / V
 * and with a sister − vv' / V. From r and c follow ρ = p / V and − vv' / V = − cc' (1 − ρ) / (ρ Σc).
 */
final class Siblings {
    private Siblings() {}

    static JointEstimate of(Reconciliation sheet, List<Integer> parts) {
        int n = parts.size();
        double[] means = new double[n];
        double[][] covariance = new double[n][n];
        double[] withCut = new double[n];
        for (int i = 0; i < n; i++) {
            Reconciled.Weight weight = (Reconciled.Weight) sheet.weight(parts.get(i));
            means[i] = weight.estimate().mean();
            covariance[i][i] = weight.estimate().spread().variance();
            withCut[i] = sheet.covarianceWithAbove(parts.get(i)).orElse(0);
        }
        double factor = factor(covariance, withCut);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance[i][j] -= i == j ? 0 : factor * (withCut[i] * withCut[j]);
            }
        }
        return JointEstimate.of(means, covariance);
    }

    /** (1 − ρ) / (ρ Σc), by the part that tells it best; 0 where nothing holds the parts together. */
    private static double factor(double[][] variance, double[] withCut) {
        double sum = Arrays.stream(withCut).sum();
        int best = 0;
        for (int i = 1; i < withCut.length; i++) {
            best = withCut[i] > withCut[best] ? i : best;
        }
        double c = withCut[best];
        double own = c * c / sum;
        double part = (c - own) / (variance[best][best] - own);
        return sum > 0 && part > 0 && part < 1 ? (1 - part) / (part * sum) : 0;
    }
}
