package dev.gambrel.benchmarks;

import dev.gambrel.yields.reconciliation.MassTree;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The same sheet as matrices: every end is an unknown, the ends of one cut that were not weighed one together, every reading a row divided by its
 * standard deviation; least squares by QR, covariance and standardised residuals. What does not depend on the sheet is made once.
 */
final class DenseReconciliation {
    private final double[][] sums;
    private final int[] weighed;

    DenseReconciliation(MassTree tree, double[] reading) {
        int n = tree.size();
        int[] unknown = new int[n];
        int[] together = new int[n];
        Arrays.fill(together, -1);
        int unknowns = 0;
        for (int v = 0; v < n; v++) {
            if (tree.isEnd(v)) {
                boolean isOpen = Double.isNaN(reading[v]);
                int cut = tree.above(v);
                boolean isNew = !isOpen || together[cut] < 0;
                unknown[v] = isNew ? unknowns++ : together[cut];
                together[cut] = isOpen ? unknown[v] : together[cut];
            }
        }
        sums = new double[n][unknowns];
        for (int v = n - 1; v >= 0; v--) {
            if (tree.isEnd(v)) {
                sums[v][unknown[v]] = 1;
            }
            for (int j = 0; v > 0 && j < unknowns; j++) {
                sums[tree.above(v)][j] = Math.max(sums[tree.above(v)][j], sums[v][j]);
            }
        }
        weighed = IntStream.range(0, n).filter(v -> !Double.isNaN(reading[v])).toArray();
    }

    /** Weights, variances and residuals of the readings, in three columns. */
    double[][] solve(double[] reading, double[] variance) {
        RealMatrix design = MatrixUtils.createRealMatrix(weighed.length, sums[0].length);
        double[] seen = new double[weighed.length];
        for (int i = 0; i < weighed.length; i++) {
            double sd = Math.sqrt(variance[weighed[i]]);
            seen[i] = reading[weighed[i]] / sd;
            for (int j = 0; j < sums[0].length; j++) {
                design.setEntry(i, j, sums[weighed[i]][j] / sd);
            }
        }
        DecompositionSolver solver = new QRDecomposition(design).getSolver();
        RealVector found = solver.solve(MatrixUtils.createRealVector(seen));
        RealMatrix inverse = solver.getInverse();
        double[][] result = new double[3][weighed.length];
        for (int i = 0; i < weighed.length; i++) {
            int v = weighed[i];
            RealVector row = MatrixUtils.createRealVector(sums[v]);
            double spread = inverse.preMultiply(row).getNorm();
            result[0][i] = row.dotProduct(found);
            result[1][i] = spread * spread;
            result[2][i] = (reading[v] - result[0][i]) / Math.sqrt(variance[v] - result[1][i]);
        }
        return result;
    }

    int[] weighed() {
        return weighed.clone();
    }
}
