package dev.gambrel.yields.reconciliation;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The same least squares as matrices: the ends of the tree are the unknowns, every reading is a sum of ends, divided by its standard deviation;
 * solved by QR. For trees in which the readings settle every weight. O(n³).
 */
final class DensePeer {
    final double[] weight;
    final double[] variance;
    final double chiSquare;

    DensePeer(MassTree tree, double[] reading, double[] error) {
        int n = tree.size();
        double[][] sums = sumsOfEnds(tree);
        List<Integer> weighed = new ArrayList<>();
        for (int v = 0; v < n; v++) {
            if (!Double.isNaN(reading[v])) {
                weighed.add(v);
            }
        }
        int ends = sums[0].length;
        DMatrixRMaj design = new DMatrixRMaj(weighed.size(), ends);
        DMatrixRMaj seen = new DMatrixRMaj(weighed.size(), 1);
        for (int i = 0; i < weighed.size(); i++) {
            int v = weighed.get(i);
            double sd = Math.sqrt(error[v]);
            seen.set(i, 0, reading[v] / sd);
            for (int j = 0; j < ends; j++) {
                design.set(i, j, sums[v][j] / sd);
            }
        }
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.leastSquares(weighed.size(), ends);
        if (!solver.setA(design.copy())) {
            throw new IllegalArgumentException("the readings do not settle every weight");
        }
        DMatrixRMaj found = new DMatrixRMaj(ends, 1);
        solver.solve(seen.copy(), found);
        DMatrixRMaj residual = seen.copy();
        CommonOps_DDRM.multAdd(-1, design, found, residual);
        chiSquare = CommonOps_DDRM.dot(residual, residual);
        weight = new double[n];
        variance = new double[n];
        addUp(sums, found, covariance(design));
    }

    private static DMatrixRMaj covariance(DMatrixRMaj design) {
        DMatrixRMaj normal = new DMatrixRMaj(design.numCols, design.numCols);
        CommonOps_DDRM.multTransA(design, design, normal);
        CommonOps_DDRM.invert(normal);
        return normal;
    }

    private void addUp(double[][] sums, DMatrixRMaj found, DMatrixRMaj covariance) {
        int ends = found.numRows;
        DMatrixRMaj row = new DMatrixRMaj(1, ends);
        DMatrixRMaj half = new DMatrixRMaj(1, ends);
        for (int v = 0; v < weight.length; v++) {
            row.setData(sums[v]);
            weight[v] = CommonOps_DDRM.dot(row, found);
            CommonOps_DDRM.mult(row, covariance, half);
            variance[v] = CommonOps_DDRM.dot(half, row);
        }
    }

    private static double[][] sumsOfEnds(MassTree tree) {
        int n = tree.size();
        int ends = 0;
        int[] place = new int[n];
        for (int v = 0; v < n; v++) {
            place[v] = tree.isEnd(v) ? ends++ : -1;
        }
        double[][] sums = new double[n][ends];
        for (int v = n - 1; v >= 0; v--) {
            if (tree.isEnd(v)) {
                sums[v][place[v]] = 1;
            }
            if (v > 0) {
                for (int j = 0; j < ends; j++) {
                    sums[tree.above(v)][j] += sums[v][j];
                }
            }
        }
        return sums;
    }
}
